using System.ComponentModel;
using System.Text;
using Emberwright.Cli.Json;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>Which stoves are due, from the dates agreed and the forecasts; with letters, messages and a calendar file.</summary>
internal sealed class DueCommand(Terminal terminal, TimeProvider time) : Command<DueCommand.Settings>
{
    internal sealed class Settings : StoveSettings
    {
        [CommandOption("--book <FILE>")]
        [Description("The firm's book: who was written to, what is put away, the firm's name on letters")]
        public string? Book { get; init; }

        [CommandOption("--until <DATE>")]
        [Description("Nothing after this day")]
        public string? Until { get; init; }

        [CommandOption("--find <WORDS>")]
        [Description("Only where these words stand in name, street, maker or label")]
        public string? Find { get; init; }

        [CommandOption("--spring-offer")]
        [Description("Only services due from June to November, to be offered in spring")]
        public bool SpringOffer { get; init; }

        [CommandOption("--ask-again")]
        [Description("Only households asked a week ago or more, with no answer")]
        public bool AskAgain { get; init; }

        [CommandOption("--agreed-only")]
        [Description("Only agreed dates; no forecasts, which take a while")]
        public bool AgreedOnly { get; init; }

        [CommandOption("--ics <FILE>")]
        [Description("Write a calendar file")]
        public string? Calendar { get; init; }

        [CommandOption("--letters <DIR>")]
        [Description("Write a letter and a short message for each, as text files")]
        public string? Letters { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var files = new VisitFiles(terminal).Read(settings.Files);
        if (new BookFile(terminal, time).Read(settings.Book) is not { } journal) return ExitCodes.BadInput;
        try
        {
            var today = settings.DayOr(time);
            var filter = new DueFilter(settings.Until is { } until ? StoveSettings.Date(until, "--until") : null, null, settings.Find, settings.SpringOffer, settings.AskAgain);
            var book = FirmBook.Fold(journal);
            var forecasts = settings.AgreedOnly ? [] : Forecasts(files.Visits, book, settings, today);
            var items = DueList.Of(files.Visits.Select(SummaryOf.Visit), forecasts, book, today).Where(item => filter.Takes(item, today)).ToArray();
            if (settings.Json) terminal.Out.WriteLine(DueDocument.Text(new(Engine.Version, ForecastDocument.Date(today)!, [.. items.Select(i => DueDocument.Of(i, today))])));
            else WriteText(items, today);
            if (settings.Calendar is { } ics) Terminal.Write(ics, Encoding.UTF8.GetBytes(CalendarOf.Items(items, time.GetUtcNow(), today)), "--ics");
            if (settings.Letters is { } folder) WriteLetters(items, book.Firm, folder, settings.SpringOffer, today);
            return files.Troubled ? ExitCodes.BadInput : items.Any(i => i.Soonest <= today) ? ExitCodes.Findings : ExitCodes.Ok;
        }
        catch (Exception e) when (e is InputException or OutputException)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    private static Dictionary<string, ForecastLine> Forecasts(IReadOnlyList<Visit> visits, FirmBook book, Settings settings, DateOnly today) =>
        visits.GroupBy(v => book.Into("stove", StoveKey.Of(v)))
            .Select(stove => (stove.Key, Line: ForecastLine.Of(StoveForecast.Of([.. stove], settings.Use, today))))
            .Where(s => s.Line is not null).ToDictionary(s => s.Key, s => s.Line!);

    private void WriteText(DueItem[] items, DateOnly today)
    {
        if (items.Length == 0)
        {
            terminal.Console.WriteLine("Nothing is due by these rules.");
            return;
        }

        var table = new Table { Border = TableBorder.Simple };
        foreach (var (name, right) in new[] { ("when", false), ("who", false), ("what", false), ("why", false), ("reaches its limit", false), ("min", true) })
            table.AddColumn(new TableColumn(name) { Alignment = right ? Justify.Right : Justify.Left });
        foreach (var item in items)
        {
            var late = today.DayNumber - item.Soonest.DayNumber;
            table.AddRow(
                Markup.Escape($"{item.Soonest:d MMM yyyy}") + (late > 0 ? $"\n[bold]{late} days late[/]" : ""),
                Markup.Escape($"{item.Last.Customer ?? "no name yet"}\n{item.Last.Address}"),
                Markup.Escape(EnumWords.Of(item.For).Replace('-', ' ')),
                Markup.Escape(item.IsSoonerThanAgreed ? $"sooner than agreed ({item.Agreed:d MMM yyyy})" : item.Basis ?? (item.Agreed is null ? "" : "agreed")),
                Markup.Escape(item.Forecast is { } f ? $"{f.Area}, {f.Likely:MMM yyyy} ({f.Early:MMM yyyy}–{f.Late:MMM yyyy})" : ""),
                $"{item.Minutes:0}");
        }

        terminal.Console.Write(table);
    }

    private void WriteLetters(DueItem[] items, FirmDetails firm, string folder, bool springOffer, DateOnly today)
    {
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OutputException($"{folder}: cannot be made ({e.Message.TrimEnd('.')}). Name another folder with --letters.", e);
        }

        foreach (var item in items)
        {
            var about = Letters.AboutOf(item, springOffer);
            var name = $"{item.Soonest:yyyy-MM-dd}-{Archive.FileName(string.Concat((item.Last.Customer ?? item.Last.Visit).Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).ToLowerInvariant())}-{EnumWords.Of(about)}";
            Terminal.Write(Path.Combine(folder, name + ".txt"), Encoding.UTF8.GetBytes(Letters.Letter(item, about, firm, today)), "--letters");
            Terminal.Write(Path.Combine(folder, name + "-message.txt"), Encoding.UTF8.GetBytes(Letters.Message(item, about, firm) + "\n"), "--letters");
        }

        terminal.Error.WriteLine($"{items.Length} letters in {folder}. Read each before it is sent.");
    }
}
