// How much room air does the room-air blower move, and what do lint, a dirty wheel or a covered grille leave of it?
//   h·p0·s² − a·s·Q − b·Q² = ρ0·Q²·Σ K_i,   K = (T_i/T_room) / (2·(C_d·A·x)²)
// Q volume flow of room air at the inlet, m³/s; h head factor of the wheel, –; p0, a, b, ρ0 its curve (see FanCurve); s speed
// over the curve's, –; the sum runs over inlet, jacket and grille: A free area, m², C_d 0.6, x share of it left open, –,
// T_i temperature of the air there, K: room air at the inlet, half-warmed in the jacket, warm at the grille.
// The quadratic is solved in closed form; density of the room cancels, so the mass flow falls with altitude and Q does not.
// An unregulated motor runs up as its load falls: slip by MotorSlip with torque (1 − t) + t·Q/(s·Q_clean), t 0.6.
// Restriction of the room-air blower = 1 − Q/Q_clean.
// Valid s 0 … 1.5, shares 0.01 … 1. Assumes warm air 35 K above the room whatever the flow, no buoyancy in the jacket
// (below 1 Pa against 30 and more).
// Source: fan laws (FanCurve), orifice law; C_d 0.6, 35 K and t 0.6 from memory, no source.
// Worked value: nothing blocked, s 1: the flow it was sized for.
using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Heat;

/// <summary>How a room-air blower runs.</summary>
/// <param name="FlowM3PerS">Room air, m³/s.</param>
/// <param name="SpeedShare">Speed over that of the clean blower at the same setting and voltage, –.</param>
public readonly record struct RoomAirFlow(double FlowM3PerS, double SpeedShare);

/// <summary>What is dirty on the way of room air; 1 is clean.</summary>
/// <param name="InletOpen">Share of the inlet's free area left by lint and hair.</param>
/// <param name="WheelHead">Head factor of the wheel.</param>
/// <param name="GrilleOpen">Share of the grille's free area left.</param>
public readonly record struct RoomAirDirt(double InletOpen = 1, double WheelHead = 1, double GrilleOpen = 1);

/// <summary>The room-air blower with its inlet, jacket and grille.</summary>
/// <param name="Curve">Its pressure over flow.</param>
/// <param name="InletM2">Free area of the inlet, m².</param>
/// <param name="JacketM2">Free area of the way round the exchanger, m².</param>
/// <param name="GrilleM2">Free area of the grille, m².</param>
/// <param name="IsRegulated">True when its speed is held by the board.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record RoomAirBlower(FanCurve Curve, double InletM2, double JacketM2, double GrilleM2, bool IsRegulated, Origin Origin)
{
    /// <summary>Air warms by this much on the way, K.</summary>
    public const double WarmingK = 35;

    private const double Discharge = 0.6;
    private const double RoomK = 293.15;
    private const double TorqueByFlow = 0.6;

    /// <summary>
    /// A blower in the usual proportions for a flow: at it the curve stands at half its shut-off pressure, of which the inlet takes a
    /// quarter, the jacket 45 % and the grille 30 %. From memory, no source.
    /// </summary>
    /// <param name="flowM3PerS">Flow of the clean stove at speed 1, m³/s.</param>
    /// <param name="shutOffPa">Shut-off pressure, Pa.</param>
    /// <param name="isRegulated">True when its speed is held by the board.</param>
    public static RoomAirBlower Sized(double flowM3PerS, double shutOffPa, bool isRegulated = false)
    {
        var curve = new FanCurve(shutOffPa, 0.2 * shutOffPa / flowM3PerS, 0.3 * shutOffPa / (flowM3PerS * flowM3PerS));
        double Area(double share, double warmth) =>
            flowM3PerS / Discharge * Math.Sqrt(warmth * curve.DensityKgPerM3 / (2 * share * 0.5 * shutOffPa));
        return new RoomAirBlower(curve, Area(0.25, 1), Area(0.45, Warmth(0.5)), Area(0.30, Warmth(1)), isRegulated, Origin.Memory);
    }

    /// <summary>Flow at a speed ratio with the motor held at it, m³/s.</summary>
    /// <param name="speedRatio">Speed over the curve's, –; ≥ 0.</param>
    /// <param name="dirt">What is dirty.</param>
    public double HeldFlowM3PerS(double speedRatio, RoomAirDirt dirt)
    {
        InputException.Require(speedRatio, 0, 1.5, "room-air blower's speed ratio", "", "1 is full speed.");
        InputException.Require(dirt.InletOpen, 0.01, 1, "room-air inlet left open", "", "1 is clean, 0.3 badly furred with lint.");
        InputException.Require(dirt.GrilleOpen, 0.01, 1, "grille left open", "", "1 is clean.");
        InputException.Require(dirt.WheelHead, 0.01, 1, "room-air wheel's head factor", "", "1 is clean.");
        var way = Term(InletM2 * dirt.InletOpen, 1) + Term(JacketM2, Warmth(0.5)) + Term(GrilleM2 * dirt.GrilleOpen, Warmth(1));
        var square = Curve.Quadratic + (Curve.DensityKgPerM3 * way);
        var linear = Curve.Linear * speedRatio;
        var push = dirt.WheelHead * Curve.ShutOffPa * speedRatio * speedRatio;
        return 2 * push / (linear + Math.Sqrt((linear * linear) + (4 * square * push)) + double.Epsilon);
    }

    /// <summary>How it runs at a setting: a regulated motor holds its speed, another runs up as it moves less air.</summary>
    /// <param name="speedRatio">Speed ratio of the clean blower at this setting and voltage.</param>
    /// <param name="dirt">What is dirty.</param>
    public RoomAirFlow Run(double speedRatio, RoomAirDirt dirt = default)
    {
        if (dirt == default)
        {
            dirt = new RoomAirDirt(1, 1, 1);
        }

        var clean = HeldFlowM3PerS(speedRatio, new RoomAirDirt(1, 1, 1));
        var share = 1.0;
        var flow = HeldFlowM3PerS(speedRatio, dirt);
        for (var i = 0; i < 12 && !IsRegulated && clean > 0; i++)
        {
            var load = 1 - TorqueByFlow + (TorqueByFlow * flow / (share * clean));
            share = MotorSlip.SpeedShareUnderLoad(load);
            flow = HeldFlowM3PerS(Math.Min(1.5, speedRatio * share), dirt);
        }

        return new RoomAirFlow(flow, share);
    }

    /// <summary>Restriction as the service area counts it: 1 − Q/Q_clean.</summary>
    /// <param name="dirt">What is dirty.</param>
    public double Restriction(RoomAirDirt dirt) => 1 - (Run(1, dirt).FlowM3PerS / Run(1).FlowM3PerS);

    private static double Warmth(double share) => 1 + (share * WarmingK / RoomK);

    private static double Term(double areaM2, double warmth) => warmth / (2 * Discharge * Discharge * areaM2 * areaM2);
}
