package daylight.app.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * All commands there are. Reading the options of every one takes longer than most of them run, so
 * only the one that is named is read; all of them where none is, for help and for what was meant.
 */
final class AllCommands {
  private static final List<Class<?>> ALL =
      List.of(
          Demo.class,
          Answer.class,
          Leaving.class,
          Still.class,
          ReadCounter.class,
          Chapters.class,
          MakeProxy.class,
          MakeCopy.class,
          Sheet.class,
          Open.class,
          Keep.class,
          Sites.class,
          Export.class,
          Forget.class,
          Backup.class,
          Restore.class,
          Seal.class,
          Verify.class,
          Figure.class,
          CommandLine.HelpCommand.class);

  private static final List<Class<?>> OF_FOOTAGE =
      List.of(
          Still.class,
          ReadCounter.class,
          Chapters.class,
          MakeProxy.class,
          MakeCopy.class,
          Sheet.class);

  private static final List<Class<?>> FIGURES =
      List.of(
          FigureDepth.class,
          FigureDig.class,
          FigureFall.class,
          FigureFreeze.class,
          FigureFrost.class,
          FigureGrade.class,
          FigureGravity.class,
          FigureHeights.class,
          FigureLeak.class,
          FigureLift.class,
          FigureNext.class,
          FigureNulls.class,
          FigurePit.class,
          FigurePonding.class,
          FigurePump.class,
          FigureRain.class,
          FigureTies.class,
          FigureWalk.class);

  private static final String FIGURE = name(Figure.class);

  private AllCommands() {}

  /** The command line that the words ask for. */
  static CommandLine under(Main main, String... words) {
    CommandLine line = new CommandLine(main);
    add(line, ALL, words.length > 0 ? words[0] : "");
    CommandLine figure = line.getSubcommands().get(FIGURE);
    if (figure != null) {
      add(figure, FIGURES, words.length > 1 && words[0].equals(FIGURE) ? words[1] : "");
    }
    return line;
  }

  /** Whether the words ask for something that looks at a recording. */
  static boolean lookAtFootage(String... words) {
    return words.length > 1 && OF_FOOTAGE.stream().anyMatch(one -> name(one).equals(words[0]));
  }

  private static void add(CommandLine to, List<Class<?>> commands, String word) {
    boolean named = commands.stream().anyMatch(one -> name(one).equals(word));
    for (Class<?> one : commands) {
      if (!named || name(one).equals(word)) {
        to.addSubcommand(one);
      }
    }
  }

  private static String name(Class<?> command) {
    return command.getAnnotation(Command.class).name();
  }
}
