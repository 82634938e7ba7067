# Sourced by ./check and ./daylight. Finds a JDK of the release Daylight is written for, whatever
# java the PATH starts with, and Maven; says what is missing and how to get it where there is none.

needed_jdk=25

# Sets "release" to the feature release of the JDK in folder $1 (17, 25 ...), or to nothing where there is
# no compiler. Starts no other program where the folder says it: this runs before every command.
jdk_release() {
  release=''
  [ -x "$1/bin/javac" ] || return 0
  local line told='JAVA_VERSION="?([0-9]+)'
  if [ -r "$1/release" ]; then
    while IFS= read -r line || [ -n "$line" ]; do
      if [[ $line =~ ^$told ]]; then release=${BASH_REMATCH[1]}; fi
    done <"$1/release"
  fi
  if [ -z "$release" ]; then
    release=$("$1/bin/javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p')
  fi
}

# Sets "found" to the one of the folders given whose release is the lowest that will do: nearest to what is
# tested; fails where none will.
nearest_jdk() {
  local folder release best_release=0
  found=''
  for folder in "$@"; do
    jdk_release "$folder"
    if [ -n "$release" ] && [ "$release" -ge "$needed_jdk" ]; then
      if [ -z "$found" ] || [ "$release" -lt "$best_release" ]; then
        found=$folder best_release=$release
      fi
    fi
  done
  [ -n "$found" ]
}

# Prints the folder of the JDK that the java command of the PATH belongs to.
jdk_of_path() {
  local java
  java=$(command -v javac) || return 0
  java=$(readlink -f "$java" 2>/dev/null || echo "$java")
  dirname "$(dirname "$java")"
}

# Exports JAVA_HOME, or returns non-zero.
find_jdk() {
  local found
  nearest_jdk "${JAVA_HOME:-/nowhere}" ||
    nearest_jdk /usr/lib/jvm/* /Library/Java/JavaVirtualMachines/*/Contents/Home \
      /opt/homebrew/opt/openjdk*/libexec/openjdk.jdk/Contents/Home ||
    nearest_jdk "$(jdk_of_path)" || return 1
  export JAVA_HOME=$found
}

say_jdk_is_missing() {
  cat >&2 <<END
Daylight needs a JDK of release $needed_jdk or newer and found none
(looked in JAVA_HOME=${JAVA_HOME:-not set}, /usr/lib/jvm, /Library/Java/JavaVirtualMachines and the PATH).
  Debian, Ubuntu: apt-get install openjdk-$needed_jdk-jdk-headless, or the temurin-$needed_jdk-jdk package
  macOS:          brew install openjdk@$needed_jdk
Or unpack any JDK $needed_jdk and set JAVA_HOME to its folder.
END
}

say_maven_is_missing() {
  cat >&2 <<END
Daylight is built by Maven 3.8 or newer, and there is no mvn on the PATH.
  Debian, Ubuntu: apt-get install maven
  macOS:          brew install maven
END
}

# What Maven itself needs to stay quiet on a recent JVM.
quiet_maven() {
  export MAVEN_OPTS="${MAVEN_OPTS:-} --enable-native-access=ALL-UNNAMED --sun-misc-unsafe-memory-access=allow"
}
