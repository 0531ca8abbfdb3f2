using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Signs;

/// <summary>
/// Words that must never be missed, however a frightened customer puts them. Each line is a set of words that must all
/// stand in one clause, in any order; | stands between words of which one will do.
/// </summary>
internal static class AlarmWords
{
    private static readonly IReadOnlyList<(string Sign, string Outcome, Words[][] All)> Lines =
    [
        Line(Complaints.Sign, Complaints.HopperSmoke, "hopper smoke|smoking|glow|flames"),
        Line(Complaints.Sign, Complaints.HopperSmoke, "lid smoke|smoking|flames comes|coming|out|under|from|when"),
        Line(Complaints.Sign, Complaints.CoAlarm, "co|monoxide alarm|detector|sensor|meter|beeps|sounding"),
        Line(Complaints.Sign, Complaints.CoAlarm, "headache|headaches|nausea|nauseous|dizzy|fainted|vomiting"),
        Line(Complaints.Sign, Complaints.CoAlarm, "feel|feels|feeling|felt|are|is|got sick|ill|unwell|drowsy"),
        Line(EmergencySign.Id, EmergencySign.VentGlows, "pipe|vent|chimney|flue|stovepipe glow|glowing|glowed|roars|roaring|red"),
        Line(EmergencySign.Id, EmergencySign.VentGlows, "chimney|flue fire|flames|sparks"),
    ];

    /// <summary>What a clause says of this kind.</summary>
    public static IEnumerable<SignOutcome> In(Words clause) => Lines
        .Where(l => l.All.All(any => any.Any(clause.Say)))
        .Select(l => new SignOutcome(l.Sign, l.Outcome));

    private static (string, string, Words[][]) Line(string sign, string outcome, string pattern) =>
        (sign, outcome, [.. pattern.Split(' ').Select(any => any.Split('|').Select(Words.Of).ToArray())]);
}
