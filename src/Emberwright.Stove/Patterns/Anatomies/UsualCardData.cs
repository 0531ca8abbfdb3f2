namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>How to learn what a card can hold, where all stoves agree; common practice, no source.</summary>
internal static class UsualCardData
{
    private static readonly Origin Practice = new(OriginKind.Pattern, "common practice, no source");

    /// <summary>Every datum of a card for a stove whose particulars are given.</summary>
    /// <param name="label">Where the rating label is.</param>
    /// <param name="sensing">How the vacuum switch's or sensor's port is found.</param>
    /// <param name="switching">How the pressures it acts at are found.</param>
    /// <param name="codes">Where alarm codes are found.</param>
    public static IReadOnlyList<CardDatum> For(string label, string sensing, string switching, string codes) =>
    [
        new("name", "make and model", label, "", "the pattern alone", Practice),
        new("healthy", "what this model reads when clean", "the manual's service or commissioning page, or last year's as-left readings",
            "right after a full service: the three-state test cold, then O2 and exhaust 30 min on high; keep them as the card's healthy values",
            "the pattern's values with wider bands", Practice),
        new("vacuumSwitch.sensePort", "where the sensing hose joins", sensing, "follow the hose by hand, stove unplugged; hose off, blow gently into the free end while someone listens where it comes out",
            "the pattern's usual port", Practice),
        new("vacuumSwitch.closes", "pressure at which it closes", switching,
            "hand pump and gauge on the switch, meter on its contact: note where it closes on the way up", "the pattern's usual setting", Practice),
        new("vacuumSwitch.opens", "pressure at which it opens again", switching,
            "the same on the way down; 20 to 40 % weaker is usual", "the pattern's usual setting", Practice),
        new("parts", "nameplate figures of motors and igniter", "the part's own label, under its bracket or on the frame",
            "ohms unpowered, running current with a clamp; rpm by tachometer on bright tape", "the pattern's usual ratings", Practice),
        new("ventLimits", "what the listing allows of the vent", "the manual's venting page; some labels state it",
            "", "the trade's 15 ft equivalent rule beside the physics", Practice),
        new("codes", "alarm codes and blink counts", codes, "provoke one on purpose once the stove is sound: lid open while feeding shows the lid's or draught's code", "the pattern's usual codes", Practice),
        new("access", "panels and fasteners", "the stove itself", "write down tool, size and count as each comes off; photograph before and after", "the pattern's usual panels", Practice),
        new("gaskets", "gaskets: where, what, size", "the parts list; the old gasket",
            "rope: width of the empty channel and three quarters of it in depth; sheet: trace the flange on paper", "the pattern's usual gaskets", Practice),
        new("documents", "manual, diagram, bulletin, recall", "the pocket behind a side panel or under the hopper lid; the maker's own pages by model and serial number", "", "none", Practice),
    ];
}
