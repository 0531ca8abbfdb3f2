using System.Text.Json;

namespace Emberwright.Cli.Tests;

/// <summary>One run of the terminal program inside the test, with what it wrote.</summary>
internal sealed record Run(int Code, string Out, string Error)
{
    public static string Demo(string name) => Path.Combine(Root, "demo", "visits", name + ".jsonl");

    public static Run Of(params string[] args) => OfInput("", args);

    /// <summary>As on a terminal that somebody watches.</summary>
    public static Run Watched(params string[] args) => OfTerminal("", live: true, args);

    public static Run OfInput(string input, params string[] args) => OfTerminal(input, live: false, args);

    private static Run OfTerminal(string input, bool live, string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = Application.Run(args, new Terminal(new StringReader(input), output, error, colour: false, live));
        return new Run(code, output.ToString(), error.ToString());
    }

    public JsonElement Json => JsonDocument.Parse(Out).RootElement;

    public static string Root
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Emberwright.slnx"))) folder = folder.Parent;
            return folder!.FullName;
        }
    }
}
