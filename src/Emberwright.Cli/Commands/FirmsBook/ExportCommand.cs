using System.ComponentModel;
using Emberwright.Visits.Firm;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>Writes customers, stoves or parts of the book as a table.</summary>
internal sealed class ExportCommand(Terminal terminal, TimeProvider time) : Command<ExportCommand.Settings>
{
    internal sealed class Settings : BookSettings
    {
        [CommandOption("--kind <KIND>")]
        [Description("customers, stoves or parts")]
        public required string Kind { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (Tables.Kind(terminal, settings.Kind) is not { } kind) return ExitCodes.BadInput;
        if (new BookFile(terminal, time).Read(settings.Book) is not { } journal) return ExitCodes.BadInput;
        // Words kept as bytes beside a phone's book are not in the file: such cells stay empty.
        terminal.Out.Write(CsvExport.Write(kind, FirmBook.Fold(journal), _ => null));
        return ExitCodes.Ok;
    }
}
