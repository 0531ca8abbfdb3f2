namespace Emberwright.Stove;

/// <summary>
/// Where the stove stands and what the day is like. It is not the appliance: the same stove at another
/// site has other healthy bands. Missing facts are null and widen the bands.
/// </summary>
/// <param name="AltitudeM">Height above sea level, m; −400 … 5000.</param>
/// <param name="OutdoorC">Outdoor air temperature, °C.</param>
/// <param name="RoomC">Room air temperature, °C.</param>
/// <param name="WindMPerS">Wind speed at the terminal, m/s.</param>
/// <param name="HousePa">House pressure against outdoors, Pa, when measured.</param>
/// <param name="Vent">The vent run; null takes the pattern's.</param>
/// <param name="OutsideAir">True when combustion air comes through an outside-air kit.</param>
/// <param name="SupplyV">Mains voltage measured at the socket, V.</param>
public sealed record Site(
    double AltitudeM = 0,
    double? OutdoorC = null,
    double? RoomC = null,
    double? WindMPerS = null,
    double? HousePa = null,
    VentRun? Vent = null,
    bool OutsideAir = false,
    double? SupplyV = null);

/// <summary>A vent run as the technician describes it; lengths in m, diameter in mm.</summary>
/// <param name="DiameterMm">Inside diameter, mm.</param>
/// <param name="HorizontalM">Horizontal length, m.</param>
/// <param name="VerticalM">Vertical length (rise), m.</param>
/// <param name="Elbows90">90° elbows.</param>
/// <param name="Elbows45">45° elbows.</param>
/// <param name="Tees">Tees, the clean-out tee among them.</param>
/// <param name="Terminal">Terminal by its id: <c>vertical-cap</c>, <c>horizontal-hood</c>, <c>open</c>.</param>
/// <param name="Lining">Lining by its id: <c>rigid</c>, <c>flexible</c>, <c>masonry</c>.</param>
/// <param name="Insulated">True for an insulated run or one inside a warm chimney.</param>
public sealed record VentRun(
    double DiameterMm,
    double HorizontalM,
    double VerticalM,
    int Elbows90 = 0,
    int Elbows45 = 0,
    int Tees = 0,
    string Terminal = "vertical-cap",
    string Lining = "rigid",
    bool Insulated = false);
