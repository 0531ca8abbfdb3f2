using System.Text;
using Emberwright.Cli.Json;
using Emberwright.Diagnosis.Rates;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>
/// Reads a visit file, draws the engine's conclusions, writes them, and says on standard error what was wrong with the
/// file. Malformed lines still give a result; the exit code then is 2.
/// </summary>
internal abstract class VisitCommand<TSettings>(Terminal terminal) : Command<TSettings> where TSettings : VisitOptions
{
    protected Terminal Terminal { get; } = terminal;

    public override int Execute(CommandContext context, TSettings settings, CancellationToken cancellationToken)
    {
        if (Read(settings.Visit, settings.Priors) is not { } findings) return ExitCodes.BadInput;
        try
        {
            var found = settings.Json ? WriteJson(findings, settings) : WriteText(findings, settings);
            return findings.Problems.Count > 0 ? ExitCodes.BadInput : found ? ExitCodes.Findings : ExitCodes.Ok;
        }
        catch (OutputException e)
        {
            Terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    /// <summary>Reads a file and draws the conclusions; says what is wrong with it and returns null where none can be drawn.</summary>
    /// <param name="path">The visit file.</param>
    /// <param name="priors">File of the firm's own rates, or null.</param>
    protected Findings? Read(string path, string? priors = null)
    {
        if (ReadFile(path) is not { } text) return null;
        var file = VisitFile.Read(text);
        try
        {
            var rates = priors is not null && ReadFile(priors) is { } json ? RatesFile.Read(json) : null;
            if (priors is not null && rates is null) return null;
            var findings = Findings.Of(file, rates: rates);
            Complain(path, file.Problems.Count > 0 ? file.Problems : findings?.Problems ?? Findings.WhyNone(file));
            return findings;
        }
        catch (InputException e)
        {
            Complain(path, file.Problems);
            Terminal.Error.WriteLine($"{path}: {e.Message}");
            return null;
        }
    }

    /// <summary>Writes tables for people; returns true when there is something to act on.</summary>
    protected abstract bool WriteText(Findings findings, TSettings settings);

    /// <summary>Writes the JSON document; returns the same as <see cref="WriteText"/>.</summary>
    protected abstract bool WriteJson(Findings findings, TSettings settings);

    protected void Write(Document document) => Terminal.Out.WriteLine(JsonOf.Text(document));

    private string? ReadFile(string path)
    {
        try
        {
            return path == VisitSettings.StandardInput ? Terminal.In.ReadToEnd() : File.ReadAllText(path, Encoding.UTF8);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Terminal.Error.WriteLine($"{path}: cannot be read ({e.Message.TrimEnd('.')}). Give the path of a file that exists, such as demo/visits/healthy-service.jsonl for a visit.");
            return null;
        }
    }

    private void Complain(string path, IReadOnlyList<Problem> problems)
    {
        foreach (var problem in problems)
            Terminal.Error.WriteLine($"{path}:{(problem.Line > 0 ? problem.Line + ":" : "")} {(problem.Field.Length > 0 ? problem.Field + ": " : "")}{problem.Message}{(problem.Value.Length > 0 ? $" [{problem.Value}]" : "")} {problem.Remedy}");
    }

    /// <summary>A table in the terminal's plain manner: rules between head and body only.</summary>
    protected static Table NewTable(params (string Name, bool Right)[] columns)
    {
        var table = new Table { Border = TableBorder.Simple };
        foreach (var (name, right) in columns)
            table.AddColumn(new TableColumn(Markup.Escape(name)) { Alignment = right ? Justify.Right : Justify.Left, NoWrap = right });
        return table;
    }
}
