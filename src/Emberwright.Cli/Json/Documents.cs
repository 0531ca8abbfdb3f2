using System.Text.Json.Serialization;

namespace Emberwright.Cli.Json;

/// <summary>What every command's JSON has in common; docs/json.md describes each field.</summary>
internal abstract record Document
{
    public required string Visit { get; init; }
    public required JsonStove Stove { get; init; }
    public required string Engine { get; init; }
    public required IReadOnlyList<JsonProblem> Problems { get; init; }
}

internal sealed record ExpectDocument : Document
{
    public required IReadOnlyList<JsonBand> Bands { get; init; }
}

internal sealed record CompareDocument : Document
{
    public required IReadOnlyList<JsonBand> Bands { get; init; }
    public required IReadOnlyList<JsonComparison> Comparisons { get; init; }
}

internal sealed record SuspectsDocument : Document
{
    public required IReadOnlyList<JsonSuspect> Suspects { get; init; }
    public required IReadOnlyList<JsonArea> Areas { get; init; }
    public JsonDoubtful? Doubtful { get; init; }
    public required IReadOnlyList<JsonAlike> Alike { get; init; }
    public required IReadOnlyList<JsonStop> Stops { get; init; }
    public required bool NoListedCauseFits { get; init; }
    public required bool CannotTell { get; init; }
    public required IReadOnlyList<string> Notes { get; init; }
}

internal sealed record NextDocument : Document
{
    [JsonIgnore(Condition = JsonIgnoreCondition.Never)]
    public required JsonNextCheck? NextCheck { get; init; }
    public required IReadOnlyList<JsonStop> Stops { get; init; }
}

internal sealed record CallDocument : Document
{
    public required JsonEmergency Emergency { get; init; }
    public required IReadOnlyList<JsonNextCheck> Questions { get; init; }
    public required IReadOnlyList<string> Advice { get; init; }
    public required IReadOnlyList<string> Booking { get; init; }
    public required double Minutes { get; init; }
    public required IReadOnlyList<JsonPart> Parts { get; init; }
    public required IReadOnlyList<JsonTool> Tools { get; init; }
    public required IReadOnlyList<JsonStop> Stops { get; init; }
}

internal sealed record JsonEmergency(string Question, bool Asked, bool Stands, IReadOnlyList<string> Say);

internal sealed record JsonPart(string Action, string Name, double Probability, double Worth, double OnVan);

internal sealed record JsonTool(string Name, double Probability, string For);

internal sealed record ReportDocument : Document
{
    public required string File { get; init; }
    public required int Pages { get; init; }
    public required int Bytes { get; init; }
}

internal sealed record JsonStove(string Pattern, string Name);

internal sealed record JsonProblem(int Line, string Field, string Value, string Message, string Remedy);

internal record JsonBand
{
    public string? Port { get; init; }
    public string? TestPoint { get; init; }
    public required string Quantity { get; init; }
    public required string Condition { get; init; }
    public required double Low { get; init; }
    public required double Expected { get; init; }
    public required double High { get; init; }
    public required string Unit { get; init; }
    public required double Confidence { get; init; }
    public required string Origin { get; init; }
}

internal sealed record JsonComparison : JsonBand
{
    public required string Entry { get; init; }
    public required string Phase { get; init; }
    public required double Reading { get; init; }
    public required string Verdict { get; init; }
}

internal sealed record JsonSuspect(string Fault, string Name, double Probability, double Prior, string? PriorOrigin, IReadOnlyList<JsonBecause> Because);

internal sealed record JsonBecause(string Evidence, string Words, double Factor);

internal sealed record JsonArea(string Area, string Name, JsonInterval AsFound, JsonInterval Now);

internal sealed record JsonInterval(double Low, double Median, double High, string Word);

internal sealed record JsonDoubtful(string Evidence, string Words, double Probability);

internal sealed record JsonAlike(IReadOnlyList<string> Faults, string? Separator);

internal sealed record JsonStop(string Rule, string Words, string Evidence, string ReleasedBy, string Source);

internal sealed record JsonNextCheck(
    string Id, string Name, double Cost, double Minutes, string Because, IReadOnlyList<string> Cautions, IReadOnlyList<JsonNextCheck>? Alternatives);
