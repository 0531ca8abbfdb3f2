using System.ComponentModel;
using Emberwright.Visits.Firm;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>What the firm's book says: people, instruments, parts and the van, what has run out, what differs.</summary>
internal sealed class ShowCommand(Terminal terminal, TimeProvider time) : Command<ShowCommand.Settings>
{
    internal sealed class Settings : BookSettings
    {
        [CommandOption("--visits <FOLDER>")]
        [Description("Visit files, so that what they fitted leaves the van")]
        public string? Visits { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (new BookFile(terminal, time).Read(settings.Book) is not { } journal) return ExitCodes.BadInput;
        var book = FirmBook.Fold(journal);
        var today = DateOnly.FromDateTime(time.GetLocalNow().DateTime);
        VisitSummary[] visits = settings.Visits is null ? [] : [.. new VisitFiles(terminal).Read([settings.Visits]).Visits.Select(SummaryOf.Visit)];
        var stock = VanStock.Of(book, visits);
        terminal.Console.MarkupLineInterpolated($"[bold]{book.Firm.Title}[/]");
        terminal.Console.WriteLine($"{book.Customers.Count()} customers, {book.Stoves.Count()} stoves with a record, {stock.Count} parts, {book.Journal.Entries.Count} entries.");
        string[] heeds =
        [
            .. book.Instruments.Where(i => i.IsOverdue(today)).Select(i => $"{i.Title}: calibration ran out {i.CalibratedUntil:d MMMM yyyy}"),
            .. book.People.SelectMany(p => (p.Qualifications ?? []).Where(q => q.IsOver(today)).Select(q => $"{p.Title}: {q.What} ran out {q.Until:d MMMM yyyy}")),
            .. stock.Where(s => s.ToOrder > 0).Select(s => $"order {s.ToOrder} × {s.Part.Name} {s.OrderNumber}"),
            .. book.Differences.Select(d => $"{d.Member} differs: {string.Join(" or ", d.Claims.Select(c => $"{c.Value} ({c.Author})"))}; the latest is used"),
        ];
        foreach (var heed in heeds) terminal.Console.WriteLine("  " + heed);
        return heeds.Length > 0 ? ExitCodes.Findings : ExitCodes.Ok;
    }
}
