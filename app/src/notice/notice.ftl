<#-- Made by the build from the libraries' own descriptions; sorted, without dates, so that it is the same each time. -->
Daylight

Licensed under the Apache License, Version 2.0; the text is in the file LICENSE.

It carries the typeface described in daylight/report/type, under the SIL Open Font License 1.1.

It is handed on together with these libraries, unchanged, each under its own licence:

<#list dependencyMap as entry>
<#assign library = entry.getKey()/>
<#assign licences = entry.getValue()/>
<#if library.groupId != "daylight">
  ${library.groupId}:${library.artifactId} ${library.version}
      <#list licences as licence>${licence}<#sep> or </#sep></#list>

</#if>
</#list>
