using System.ComponentModel;
using Emberwright.Visits.Firm;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>Puts the books of two devices of a firm together.</summary>
internal sealed class MergeCommand(Terminal terminal, TimeProvider time) : Command<MergeCommand.Settings>
{
    internal sealed class Settings : BookSettings
    {
        [CommandArgument(1, "<OTHER>")]
        [Description("The other book; it stays as it is")]
        public required string Other { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var files = new BookFile(terminal, time);
        if (files.Read(settings.Book) is not { } one || files.Read(settings.Other) is not { } two) return ExitCodes.BadInput;
        try
        {
            var both = one.Entries.Count == 0 ? two : one.Merge(two);
            BookFile.Write(settings.Book, both, "BOOK");
            terminal.Console.WriteLine($"{both.Entries.Count - one.Entries.Count} entries gained.");
            var differences = FirmBook.Fold(both).Differences;
            foreach (var d in differences) terminal.Console.WriteLine($"  {d.Member}: {string.Join(" or ", d.Claims.Select(c => $"{c.Value} ({c.Author})"))}; the latest is used");
            return differences.Count > 0 ? ExitCodes.Findings : ExitCodes.Ok;
        }
        catch (Exception e) when (e is OutputException or ArgumentException)
        {
            terminal.Error.WriteLine(e is ArgumentException ? $"{settings.Other} is the book of another firm ({two.Header.Visit}, not {one.Header.Visit}). Only books of one firm can be put together." : e.Message);
            return ExitCodes.BadInput;
        }
    }
}
