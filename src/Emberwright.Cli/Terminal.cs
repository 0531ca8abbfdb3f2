using Spectre.Console;

namespace Emberwright.Cli;

/// <summary>
/// Where the terminal reads and writes: results to standard output, messages to standard error. Colour is used only
/// when output is a terminal and NO_COLOR is not set.
/// </summary>
/// <param name="input">What is typed.</param>
/// <param name="output">Results.</param>
/// <param name="error">Messages.</param>
/// <param name="colour">True to use colour.</param>
/// <param name="live">True when somebody watches the messages, so that a line may be written over.</param>
internal sealed class Terminal(TextReader input, TextWriter output, TextWriter error, bool colour, bool live = false)
{
    public TextReader In { get; } = input;

    public TextWriter Out { get; } = output;

    public TextWriter Error { get; } = error;

    public bool Live { get; } = live;

    public IAnsiConsole Console { get; } = Make(output, colour);

    public static Terminal OfProcess() => new(
        System.Console.In, System.Console.Out, System.Console.Error,
        !System.Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")),
        !System.Console.IsErrorRedirected);

    /// <summary>Writes a file.</summary>
    /// <param name="path">Where.</param>
    /// <param name="bytes">Its content.</param>
    /// <param name="option">The option that named it.</param>
    /// <exception cref="OutputException">It cannot be written there.</exception>
    public static void Write(string path, byte[] bytes, string option)
    {
        try
        {
            File.WriteAllBytes(path, bytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OutputException($"{path}: cannot be written ({e.Message.TrimEnd('.')}). Name a file in a folder that exists with {option}.", e);
        }
    }

    /// <summary>Reads a file's text.</summary>
    /// <param name="path">Where.</param>
    /// <param name="option">The option that named it.</param>
    /// <exception cref="Stove.InputException">It cannot be read there.</exception>
    public static string Read(string path, string option)
    {
        try
        {
            return File.ReadAllText(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Stove.InputException(option, $"{path} cannot be read ({e.Message.TrimEnd('.')})", "Name a file that is there.");
        }
    }

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
