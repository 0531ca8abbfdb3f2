using System.Globalization;
using Emberwright.Visits.Fouling;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>What a forecast says of one stove, in figures short enough to keep beside the stove.</summary>
/// <param name="Due">When to come.</param>
/// <param name="Early">One chance in ten that an area has passed its limit by then; null beyond thirty years.</param>
/// <param name="Likely">One chance in two.</param>
/// <param name="Late">Nine in ten.</param>
/// <param name="Area">The area likeliest to be the first.</param>
/// <param name="RestsOn">What its growth rests on.</param>
public sealed record ForecastLine(DateOnly Due, DateOnly? Early, DateOnly? Likely, DateOnly? Late, string Area, string RestsOn)
{
    /// <summary>The line of a forecast; null when there is nothing to forecast.</summary>
    public static ForecastLine? Of(FoulingForecast? forecast) => forecast is { Due: { } due }
        ? new(due, forecast.DateTo(0.1), forecast.DateTo(0.5), forecast.DateTo(0.9), PassageWords.Of(forecast.First.Growth.Prior.Passage), PassageWords.RestsOn(forecast.First.Growth))
        : null;
}

/// <summary>One thing to be done for a stove by a day.</summary>
/// <param name="Stove">The stove's key.</param>
/// <param name="For">What for.</param>
/// <param name="On">The day: the one agreed, or the forecast's where none was.</param>
/// <param name="Agreed">The day agreed with the household; null when none was.</param>
/// <param name="Basis">Why then, in words.</param>
/// <param name="Forecast">What the forecast says; null when it was not made.</param>
/// <param name="Last">The stove's last visit.</param>
/// <param name="Minutes">How long it should take.</param>
/// <param name="Asked">When the household was last written to or called about it, with no visit booked since.</param>
public sealed record DueItem(
    string Stove, DueFor For, DateOnly On, DateOnly? Agreed, string? Basis, ForecastLine? Forecast, VisitSummary Last, double Minutes, Contact? Asked)
{
    private const int AWeek = 7;

    /// <summary>True when fouling is likely to be past its limit more than a fortnight before the day agreed.</summary>
    public bool IsSoonerThanAgreed => For == DueFor.Service && Agreed is { } agreed && Forecast is { } f && f.Due.AddDays(14) < agreed;

    /// <summary>The day it should be looked at: the sooner of the two.</summary>
    public DateOnly Soonest => IsSoonerThanAgreed ? Forecast!.Due : On;

    /// <summary>True when a week has passed since the household was asked and nothing was booked.</summary>
    public bool AskAgain(DateOnly today) => Asked is { Answer: null } asked && asked.On.AddDays(AWeek) <= today;
}

/// <summary>What one wants to see of the list.</summary>
/// <param name="Until">Nothing after this day.</param>
/// <param name="For">Only this.</param>
/// <param name="Words">Words that must stand in name, address, maker or label.</param>
/// <param name="SpringOffer">Only services that fall due from June to November: those one offers in spring, before the rush.</param>
/// <param name="AskAgain">Only those asked a week ago or more with no answer.</param>
public sealed record DueFilter(DateOnly? Until = null, DueFor? For = null, string? Words = null, bool SpringOffer = false, bool AskAgain = false)
{
    /// <summary>Whether an item is wanted.</summary>
    /// <param name="item">The item.</param>
    /// <param name="today">Today.</param>
    public bool Takes(DueItem item, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(item);
        return (Until is not { } until || item.Soonest <= until)
            && (For is not { } what || item.For == what)
            && (!SpringOffer || item.For == DueFor.Service && item.On.Month is >= 6 and <= 11 && item.On > today && item.On <= today.AddMonths(10))
            && (!AskAgain || item.AskAgain(today))
            && SearchWords.Match(Words, item.Last.Text());
    }
}

/// <summary>What is due, from the dates agreed and the forecasts.</summary>
public static class DueList
{
    private const int FollowUpAfterDays = 7;
    private const int FollowUpUntilDays = 28;

    /// <summary>The list, soonest first.</summary>
    /// <param name="visits">All visits, in any order.</param>
    /// <param name="forecasts">What was forecast, by stove key.</param>
    /// <param name="book">The firm's book.</param>
    /// <param name="today">Today.</param>
    public static IReadOnlyList<DueItem> Of(
        IEnumerable<VisitSummary> visits, IReadOnlyDictionary<string, ForecastLine> forecasts, FirmBook book, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(visits);
        ArgumentNullException.ThrowIfNull(forecasts);
        ArgumentNullException.ThrowIfNull(book);
        var all = visits.ToArray();
        var own = all.Where(v => v is { State: VisitState.SignedOff, Kind: VisitKind.Service, MinutesOnSite: > 10 and < 600 })
            .ToLookup(v => v.Pattern ?? "", v => v.MinutesOnSite!.Value);
        var contacts = book.Of<Contact>().GroupBy(c => book.Into("stove", c.Body.Stove)).ToDictionary(g => g.Key, g => g.Select(f => f.Body).ToArray());
        return
        [
            .. all.GroupBy(v => book.Into("stove", v.Stove))
                .Where(stove => !book.IsAway("stove", stove.Key))
                .SelectMany(stove => Items(stove.Key, [.. stove.OrderBy(v => v.Day)], forecasts.GetValueOrDefault(stove.Key), own, contacts.GetValueOrDefault(stove.Key, []), today))
                .OrderBy(item => item.Soonest).ThenBy(item => item.Stove, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<DueItem> Items(
        string stove, VisitSummary[] visits, ForecastLine? forecast, ILookup<string, double> own, Contact[] contacts, DateOnly today)
    {
        var last = visits[^1];
        // A visit already taken or under way is what is being done about it, unless it has agreed the next date.
        if (last.Kind == VisitKind.Decommissioning || last is { State: not VisitState.SignedOff, Due: null }) yield break;
        var minutes = ServiceMinutes.Of(last.Pattern, [.. own[last.Pattern ?? ""]]).Minutes;
        Contact? Asked(ContactAbout about) => contacts.LastOrDefault(c => c.About == about && !(c.On < last.Day));
        if ((last.Due?.On ?? forecast?.Due) is { } on)
        {
            var basis = last.Due?.Basis ?? (forecast is null ? null : $"{forecast.Area}; growth from {forecast.RestsOn}");
            yield return new(stove, last.Due?.For ?? DueFor.Service, on, last.Due?.On, basis, forecast, last, minutes, Asked(ContactAbout.Due) ?? Asked(ContactAbout.SpringOffer));
        }

        if (last is { State: VisitState.SignedOff, Day: { } day } && last.Due?.For != DueFor.FollowUp && day.AddDays(FollowUpAfterDays) is var asks && asks <= today.AddDays(FollowUpAfterDays)
            && day.AddDays(FollowUpUntilDays) >= today && Asked(ContactAbout.HowItRuns) is null)
            yield return new(stove, DueFor.FollowUp, asks, null, string.Create(CultureInfo.InvariantCulture, $"a week after the visit of {day:d MMMM yyyy}"), null, last, 5, null);
    }
}
