using System.ComponentModel;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>Withdraws the last entries of the book. They stay in the file.</summary>
internal sealed class UndoCommand(Terminal terminal, TimeProvider time) : Command<UndoCommand.Settings>
{
    internal sealed class Settings : BookSettings
    {
        [CommandArgument(1, "<COUNT>")]
        [Description("How many")]
        public required int Count { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (new BookFile(terminal, time).Read(settings.Book) is not { } journal) return ExitCodes.BadInput;
        var standing = FirmBook.Fold(journal).Facts;
        if (settings.Count < 1 || settings.Count > standing.Count)
        {
            terminal.Error.WriteLine($"COUNT is {settings.Count}; {standing.Count} entries stand in {settings.Book}. Give a number from 1 to {standing.Count}.");
            return ExitCodes.BadInput;
        }

        try
        {
            BookFile.Write(settings.Book, new BookFile(terminal, time).With(journal, standing.TakeLast(settings.Count).Select(f => new CorrectionBody(f.Id, null, "taken back")), settings.Author), "BOOK");
            terminal.Console.WriteLine($"{settings.Count} entries withdrawn.");
            return ExitCodes.Ok;
        }
        catch (OutputException e)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }
}
