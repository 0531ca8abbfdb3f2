using Emberwright.Cli.Json;
using Emberwright.Reports.FromVisit;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Fouling;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>How one stove fouls and when it is due, from all its visits.</summary>
internal sealed class ForecastCommand(Terminal terminal, TimeProvider time) : Command<StoveSettings>
{
    public override int Execute(CommandContext context, StoveSettings settings, CancellationToken cancellationToken)
    {
        var files = new VisitFiles(terminal).Read(settings.Files);
        if (files.OfOneStove() is not { } visits) return ExitCodes.BadInput;
        try
        {
            var day = settings.DayOr(time);
            if (StoveForecast.Of(visits, settings.Use, day) is not { Areas.Count: > 0 } forecast)
            {
                terminal.Error.WriteLine($"{files.PathOf(visits[^1])}: no visit says which pattern the stove is of. Add an appliance entry with a pattern; emberwright patterns lists them.");
                return ExitCodes.BadInput;
            }

            if (settings.Json) WriteJson(visits, forecast, day);
            else WriteText(visits, forecast, day);
            return files.Troubled ? ExitCodes.BadInput : forecast.Due <= day ? ExitCodes.Findings : ExitCodes.Ok;
        }
        catch (InputException e)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    private void WriteText(IReadOnlyList<Visit> visits, FoulingForecast forecast, DateOnly day)
    {
        var use = forecast.Areas[0].Use;
        terminal.Console.MarkupLineInterpolated($"[bold]{Title(visits)}[/]");
        terminal.Console.WriteLine($"{visits.Count} {(visits.Count == 1 ? "visit" : "visits")}, the last on {forecast.Areas[0].From:d MMMM yyyy}. Fuel: {use.TonnesPerYear:0.0#} t a year ({use.Basis}). Reckoned on {day:d MMMM yyyy}; intervals hold four chances in five.");
        var table = new Table { Border = TableBorder.Simple };
        foreach (var (name, right) in new[] { ("area", false), ("today", false), ("growth per t", true), ("seasons seen", true), ("limit", true), ("fuel to limit", true), ("reaches it", false) })
            table.AddColumn(new TableColumn(name) { Alignment = right ? Justify.Right : Justify.Left });
        foreach (var area in forecast.Areas.OrderBy(a => a.TonnesTo(0.5))) table.AddRow([.. Row(area, day).Select(Markup.Escape)]);
        terminal.Console.Write(table);
        foreach (var limits in forecast.Areas.GroupBy(a => a.Why))
            terminal.Console.WriteLine($"Limit of {string.Join(", ", limits.Select(a => PassageWords.Of(a.Growth.Prior.Passage).ToLowerInvariant()))}: {limits.Key}.");
        if (forecast.Areas.All(a => a.Growth.Seasons.Count == 0)) terminal.Console.WriteLine("No season of this stove was measured at both ends yet: growth is what is usual of such stoves.");
        terminal.Console.WriteLine(Due(forecast, day));
    }

    private static string[] Row(AreaForecast area, DateOnly day)
    {
        var passage = area.Growth.Prior.Passage;
        var (low, middle, high) = area.Restriction(area.Use.TonnesBetween(area.From, day));
        return
        [
            PassageWords.Of(passage),
            RestrictionWords.Sentence(passage, new(low, middle, high)),
            $"{area.Growth.Quantile(0.5):0.00} ({area.Growth.Quantile(0.1):0.00}–{area.Growth.Quantile(0.9):0.00})",
            $"{area.Growth.Seasons.Count}",
            $"{100 * Deposit.Share(area.Limit):0} %",
            $"{area.TonnesTo(0.5):0.0} t ({area.TonnesTo(0.1):0.0}–{area.TonnesTo(0.9):0.0})",
            $"{Month(area.DateTo(0.5))} ({Month(area.DateTo(0.1))}–{Month(area.DateTo(0.9))})",
        ];
    }

    private static string Due(FoulingForecast forecast, DateOnly day)
    {
        var late = forecast.Due is { } due && due < day ? $", {day.DayNumber - due.DayNumber} days ago" : "";
        var why = forecast.DueByFouling == forecast.Due
            ? $"{PassageWords.Of(forecast.First.Growth.Prior.Passage).ToLowerInvariant()} first; the chance of a limit passed unseen then is one in five"
            : $"a year after the last service; fouling alone would allow until {forecast.DueByFouling:d MMMM yyyy}";
        return $"Next due: {forecast.Due:d MMMM yyyy}{late} ({why}).";
    }

    private static string Month(DateOnly? date) => date?.ToString("MMM yyyy", System.Globalization.CultureInfo.InvariantCulture) ?? "beyond 30 years";

    private static string Title(IReadOnlyList<Visit> visits)
    {
        var last = visits[^1];
        return string.Join(" · ", new[] { last.Customer?.Name, StoveWords.Name(visits.LastOrDefault(v => v.Appliance is not null) ?? last) }.Where(w => !string.IsNullOrEmpty(w)));
    }

    private void WriteJson(IReadOnlyList<Visit> visits, FoulingForecast forecast, DateOnly day)
    {
        var use = forecast.Areas[0].Use;
        terminal.Out.WriteLine(ForecastDocument.Text(new ForecastDocument
        {
            Engine = Engine.Version,
            Stove = Title(visits),
            Day = ForecastDocument.Date(day)!,
            From = ForecastDocument.Date(forecast.Areas[0].From)!,
            Visits = [.. visits.Select(v => v.Id)],
            Fuel = new(Math.Round(use.TonnesPerYear, 4), use.LnSd, use.Basis, [.. use.MonthShares.Select(s => Math.Round(s, 4))]),
            Areas = [.. forecast.Areas.Select(a => ForecastDocument.Area(a, day))],
            Due = ForecastDocument.NextDue(forecast),
        }));
    }
}
