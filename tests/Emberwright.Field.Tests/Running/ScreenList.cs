namespace Emberwright.Field.Tests.Running;

/// <summary>Every screen of the app by its address.</summary>
internal static class ScreenList
{
    /// <summary>Name and address of each screen; the name is its picture's.</summary>
    /// <param name="visit">Address of a visit that has a stove.</param>
    public static IReadOnlyList<(string Name, string Address)> Named(string visit) =>
    [
        ("today", ""), ("stoves", "stoves"), ("stove-history", "stoves/fennickoar~fo4020871"), ("due", "due"), ("firm", "firm"), ("parts", "firm/parts"), ("people", "firm/people"),
        ("customers", "firm/customers"), ("instruments", "firm/instruments"), ("stove-records", "firm/stoves"), ("learnt", "firm/learnt"), ("exchange", "firm/exchange"),
        ("call", "visit/new"), ("visit", visit), ("reading", $"{visit}/reading"), ("checks", $"{visit}/checks"), ("check", $"{visit}/check/clean-ash-passages"),
        ("stove", $"{visit}/stove"), ("three-states", $"{visit}/three-states"), ("feed", $"{visit}/feed"), ("papers", $"{visit}/papers"), ("practice", "practice"), ("words", "words"),
    ];

    /// <summary>The addresses alone.</summary>
    public static IEnumerable<string> All(string visit) => Named(visit).Select(screen => screen.Address);
}
