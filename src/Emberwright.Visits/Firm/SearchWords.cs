namespace Emberwright.Visits.Firm;

/// <summary>
/// The words people search by and what else these are called. Every word typed must be found, in its own form or in
/// another name of the same thing; a phrase of the trade counts as one word.
/// </summary>
public static class SearchWords
{
    // One thing a line. Common practice, no source.
    private static readonly string[][] Same =
    [
        ["feed motor", "auger motor", "gearmotor"],
        ["feed screw", "auger", "screw"],
        ["combustion blower", "exhaust fan", "draft fan", "draught fan", "exhaust blower", "smoke fan"],
        ["room-air blower", "room air blower", "convection fan", "distribution fan", "room fan", "convection blower", "distribution blower"],
        ["disc", "snap disc", "thermodisc", "limit switch"],
        ["burn pot", "fire pot", "firepot", "burnpot", "brazier"],
        ["outside air", "outside-air kit", "fresh air kit", "oak"],
        ["vacuum switch", "pressure switch", "air switch"],
        ["igniter", "ignitor", "hot rod", "glow plug"],
        ["gasket", "rope", "seal"],
        ["vent", "flue", "chimney", "exhaust pipe"],
        ["board", "control board", "circuit board"],
        ["thermocouple", "probe"],
        ["street", "st", "st."],
        ["lane", "ln", "ln."],
        ["road", "rd", "rd."],
    ];

    /// <summary>What must be found: for each word typed, the forms any of which will do; lower case.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Read(string? typed)
    {
        var rest = $" {string.Join(' ', (typed ?? "").ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))} ";
        var wanted = new List<IReadOnlyList<string>>();
        foreach (var phrase in Same.SelectMany(s => s.Where(n => n.Contains(' ')).Select(n => (Name: n, Names: s))).OrderByDescending(p => p.Name.Length))
        {
            if (!rest.Contains($" {phrase.Name} ", StringComparison.Ordinal)) continue;
            rest = rest.Replace($" {phrase.Name} ", " ", StringComparison.Ordinal);
            wanted.Add(phrase.Names);
        }

        foreach (var word in rest.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            wanted.Add(Same.FirstOrDefault(s => s.Contains(word)) is { } names ? [word, .. names.Where(n => n != word && n.Length > 2)] : [word]);
        return wanted;
    }

    /// <summary>True when every word typed is found in a text of lower case.</summary>
    /// <param name="typed">What was typed; nothing matches all.</param>
    /// <param name="text">The text.</param>
    public static bool Match(string? typed, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return string.IsNullOrWhiteSpace(typed) || Read(typed).All(forms => forms.Any(form => text.Contains(form, StringComparison.Ordinal)));
    }
}
