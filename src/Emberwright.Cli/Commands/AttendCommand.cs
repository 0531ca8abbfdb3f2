using System.ComponentModel;
using Emberwright.Cli.Attending;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Emberwright.Visits.SigningOff;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>Attends a visit at the terminal, check by check.</summary>
internal sealed class AttendCommand(Terminal terminal) : Command<AttendCommand.Settings>
{
    private const string Unnamed = "unnamed";

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<FILE>")]
        [Description("The visit file; entries are added to it as they are typed")]
        public required string File { get; init; }

        [CommandOption("--author <NAME>")]
        [Description("Who writes; the last author in the file when left out")]
        public string? Author { get; init; }

        [CommandOption("--begin <PATTERN>")]
        [Description("Begin a new file for a stove of this pattern")]
        public string? Begin { get; init; }

        [CommandOption("--phone")]
        [Description("A telephone call: the emergency question first, then questions only; at the end what to tell, agree and bring")]
        public bool Phone { get; init; }

        [CommandOption("--units <SYSTEM>")]
        [Description("us (inWC, degF) or si (Pa, degC) for the healthy figures; what you type carries its own unit")]
        [DefaultValue("si")]
        public string Units { get; init; } = "si";

        public override ValidationResult Validate() => Units.ToLowerInvariant() is "us" or "si"
            ? ValidationResult.Success()
            : ValidationResult.Error($"--units is '{Units}'; it takes us (inWC, degF) or si (Pa, degC).");
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        try
        {
            return Attend(settings);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"{settings.File}: {e.Message.TrimEnd('.')}. What was written before is in the file; give the path of a visit file that can be written.");
            return ExitCodes.BadInput;
        }
        catch (InputException e)
        {
            terminal.Error.WriteLine($"{settings.File}: {e.Message}");
            return ExitCodes.BadInput;
        }
    }

    private int Attend(Settings settings)
    {
        if (settings.Begin is { } pattern && !BeginFile(settings.File, pattern, settings.Author ?? Unnamed)) return ExitCodes.BadInput;
        var text = File.ReadAllText(settings.File);
        var file = VisitFile.Read(text);
        foreach (var problem in file.Problems) terminal.Error.WriteLine($"{settings.File}:{problem.Line}: {problem.Message} {problem.Remedy}");
        if (text.Length > 0 && !text.EndsWith('\n') && file.Journal.Entries.Any(e => e.Body is UnreadBody))
            terminal.Error.WriteLine("The cut-off line stays in the file as it is; what you type goes on lines of its own.");
        if (Findings.Of(file, !settings.Phone) is not { } findings)
        {
            foreach (var problem in Findings.WhyNone(file)) terminal.Error.WriteLine($"{settings.File}: {problem.Message} {problem.Remedy}");
            return ExitCodes.BadInput;
        }

        // A name of its own for each attendance: a file restored from a copy can never meet its own numbers again.
        var author = settings.Author ?? file.Journal.Entries.Select(e => e.Author).LastOrDefault(a => a.Length > 0) ?? Unnamed;
        var log = new VisitLog(settings.File, new EntryFactory($"terminal-{Guid.CreateVersion7():N}", author, TimeProvider.System, Guid.CreateVersion7));
        var units = settings.Units.Equals("us", StringComparison.OrdinalIgnoreCase) ? UnitSystem.Us : UnitSystem.Si;
        var review = new AttendSession(terminal, log, units, findings, !settings.Phone).Run();
        return settings.Phone || review.Decision == Decision.Refused ? ExitCodes.Findings : ExitCodes.Ok;
    }

    private bool BeginFile(string path, string words, string author)
    {
        if (PatternLibrary.Find(words) is not { } pattern)
        {
            terminal.Error.WriteLine($"--begin: no pattern goes by '{words}'. Take one of {string.Join(", ", PatternLibrary.All.Select(p => p.Id))}.");
            return false;
        }

        using (var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write))
        using (var writer = new StreamWriter(stream)) writer.Write(VisitHeader.For(Guid.CreateVersion7().ToString()).Line + "\n");
        new VisitLog(path, new EntryFactory($"terminal-{Guid.CreateVersion7():N}", author, TimeProvider.System, Guid.CreateVersion7))
            .Append(new ApplianceBody(pattern.Id));
        return true;
    }
}
