using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>The board's sequence of a model: its pattern's, with the settings and codes that the card states.</summary>
public static class CardProgram
{
    /// <summary>The program of a stove.</summary>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="card">Its card, or null for the pattern's own.</param>
    public static BurnProgram Of(Pattern pattern, StoveCard? card)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        var program = pattern.Program;
        var closes = card?.SwitchClosesPa ?? pattern.Switch.ClosesPa;
        var opens = card?.SwitchOpensPa ?? pattern.Switch.OpensPa;
        return program with
        {
            LowFeedShare = pattern.Levels[FireState.Low].FeedKgPerH / pattern.Levels[FireState.High].FeedKgPerH,
            Draft = program.Draft is { } draft ? draft with { WeakestPa = opens } : null,
            Settings = [.. program.Settings.Select(s => s.Contact == ComponentIds.VacuumSwitch ? s with { ActsAt = closes, ReleasesAt = opens } : Stated(s, card))],
            Codes = [.. program.Codes.Select(c => CodeBook.Shown(card, c.Id) is { } code ? c with { Shown = code.Code, Words = code.Meaning } : c)],
        };
    }

    // Where only one of the two temperatures is stated the differential stays the pattern's.
    private static ContactSetting Stated(ContactSetting setting, StoveCard? card)
    {
        if (card?.Wiring?.Contacts.FirstOrDefault(c => c.Component == setting.Contact) is not { } contact) return setting;
        var differential = setting.ActsAt - setting.ReleasesAt;
        var acts = contact.ActsC ?? (contact.ReleasesC is { } releases ? releases + differential : setting.ActsAt);
        return setting with { ActsAt = acts, ReleasesAt = contact.ReleasesC ?? acts - differential };
    }
}
