using Spectre.Console;

namespace Emberwright.Cli;

/// <summary>
/// Where the terminal reads and writes: results to standard output, messages to standard error. Colour is used only
/// when output is a terminal and NO_COLOR is not set.
/// </summary>
internal sealed class Terminal(TextReader input, TextWriter output, TextWriter error, bool colour)
{
    public TextReader In { get; } = input;

    public TextWriter Out { get; } = output;

    public TextWriter Error { get; } = error;

    public IAnsiConsole Console { get; } = Make(output, colour);

    public static Terminal OfProcess() => new(
        System.Console.In, System.Console.Out, System.Console.Error,
        !System.Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")));

    private static IAnsiConsole Make(TextWriter output, bool colour)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = colour ? AnsiSupport.Detect : AnsiSupport.No,
            ColorSystem = colour ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
            Out = new AnsiConsoleOutput(output),
        });
        if (!colour) console.Profile.Width = 120;
        return console;
    }
}
