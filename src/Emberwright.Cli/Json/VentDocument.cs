using System.Text.Json.Serialization;

namespace Emberwright.Cli.Json;

internal sealed record VentDocument : Document
{
    public required JsonRun Run { get; init; }
    public required IReadOnlyList<JsonVentCase> Cases { get; init; }
    public required bool Works { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.Never)]
    public required double? SmallestDiameterMm { get; init; }
    public required double EquivalentLengthFt { get; init; }
    public required bool AsksForFourInch { get; init; }
    public required string Rule { get; init; }
    public required IReadOnlyList<JsonTermination> Terminations { get; init; }
    public required IReadOnlyList<JsonDeposit> Deposits { get; init; }
    public required string Caution { get; init; }
}

internal sealed record JsonRun(
    double DiameterMm, double HorizontalM, double VerticalM, int Elbows90, int Elbows45, int Tees, string Terminal, string Lining, bool Insulated);

internal sealed record JsonVentCase(
    string Condition, double WindMPerS, double RequiredPa, double AvailablePa, double MarginPa, double AirShare, string Status, bool Works,
    double PositiveLengthM, double CondensingLengthM, double? DewPointC, IReadOnlyList<JsonVentPoint> Profile);

internal sealed record JsonVentPoint(double DistanceM, double HeightM, double GasC, double WallC, double PressurePa);

internal sealed record JsonDeposit(
    string Passage, double ThicknessMm, double AreaShare, double HydraulicDiameterMm, double RoughnessMm, double ConductanceShare, double Restriction);

internal sealed record JsonTermination(string Id, string From, double UsualM, string Origin);
