using Emberwright.Stove.Quantities;

namespace Emberwright.Field.Words;

/// <summary>How a region writes numbers and dates, and the units it begins with. It is not a language: English is spoken in several.</summary>
/// <param name="Tag">Its tag: language and country, as browsers write them.</param>
/// <param name="Decimal">The decimal sign.</param>
/// <param name="MonthFirst">True where the month stands before the day.</param>
/// <param name="TwelveHours">True where the day has twice twelve hours.</param>
/// <param name="Units">The units a phone begins with; they can be changed at any time.</param>
public sealed record Region(string Tag, char Decimal, bool MonthFirst, bool TwelveHours, UnitSystem Units)
{
    /// <summary>The regions known. Signs and orders as the Unicode Common Locale Data Repository has them, from memory.</summary>
    public static IReadOnlyList<Region> All { get; } =
    [
        new("en-US", '.', true, true, UnitSystem.Us),
        new("en-CA", '.', true, true, UnitSystem.Us),
        new("en-GB", '.', false, false, UnitSystem.Si),
        new("en-IE", '.', false, false, UnitSystem.Si),
        new("en-AU", '.', false, true, UnitSystem.Si),
        new("en-NZ", '.', false, true, UnitSystem.Si),
        .. ((string[])[
            "de-DE", "de-AT", "fr-FR", "fr-BE", "fr-CH", "fr-CA", "it-IT", "es-ES", "pt-PT", "nl-NL", "nl-BE", "da-DK", "sv-SE", "nb-NO", "fi-FI",
            "pl-PL", "cs-CZ", "sk-SK", "sl-SI", "hr-HR", "hu-HU", "ro-RO", "bg-BG", "el-GR", "et-EE", "lv-LV", "lt-LT", "tr-TR", "uk-UA",
        ]).Select(tag => new Region(tag, ',', false, false, UnitSystem.Si)),
        .. ((string[])["de-CH", "it-CH"]).Select(tag => new Region(tag, '.', false, false, UnitSystem.Si)),
    ];

    /// <summary>The region of a browser's language tag: the very one, else the first of its language, else the first of all.</summary>
    public static Region Of(string? tag) =>
        All.FirstOrDefault(region => region.Tag.Equals(tag, StringComparison.OrdinalIgnoreCase))
        ?? All.FirstOrDefault(region => region.Tag.Split('-')[0].Equals(tag?.Split('-')[0], StringComparison.OrdinalIgnoreCase))
        ?? All[0];

    /// <summary>How it writes, by an example: a number, a day, a time.</summary>
    public string Example => $"1234{Decimal}5 · {(MonthFirst ? "11/25" : "25.11.")} · {(TwelveHours ? "2:30 PM" : "14:30")}";
}
