using System.ComponentModel;
using System.Text;
using Emberwright.Visits.Firm;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>Takes a table of customers, stoves or parts into the book: whole, or not at all.</summary>
internal sealed class ImportCommand(Terminal terminal, TimeProvider time) : Command<ImportCommand.Settings>
{
    internal sealed class Settings : BookSettings
    {
        [CommandArgument(1, "<TABLE>")]
        [Description("A CSV file; its first row names the columns")]
        public required string Table { get; init; }

        [CommandOption("--kind <KIND>")]
        [Description("customers, stoves or parts")]
        public required string Kind { get; init; }

        [CommandOption("--dry-run")]
        [Description("Say what would be written, and write nothing")]
        public bool DryRun { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (Tables.Kind(terminal, settings.Kind) is not { } kind) return ExitCodes.BadInput;
        if (new BookFile(terminal, time).Read(settings.Book) is not { } journal) return ExitCodes.BadInput;
        string text;
        try
        {
            text = File.ReadAllText(settings.Table, Encoding.UTF8);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"{settings.Table}: cannot be read ({e.Message.TrimEnd('.')}). Give the path of a CSV file.");
            return ExitCodes.BadInput;
        }

        var preview = CsvImport.Read(text, kind, FirmBook.Fold(journal));
        terminal.Console.WriteLine($"{preview.New} new, {preview.Changed} changed, {preview.Same} as they are.{(preview.Unused.Count > 0 ? $" Passed over: {string.Join(", ", preview.Unused)}." : "")}");
        foreach (var problem in preview.Problems) terminal.Error.WriteLine($"{settings.Table}: {problem}");
        if (!preview.IsSound)
        {
            terminal.Error.WriteLine("Nothing was taken in. Mend the table and try again.");
            return ExitCodes.BadInput;
        }

        if (settings.DryRun || preview.Entries.Count == 0) return ExitCodes.Ok;
        try
        {
            BookFile.Write(settings.Book, new BookFile(terminal, time).With(journal, preview.Entries, settings.Author), "BOOK");
            terminal.Error.WriteLine($"Written. Take it back with: emberwright firm undo {settings.Book} {preview.Entries.Count}");
            return ExitCodes.Ok;
        }
        catch (OutputException e)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }
}
