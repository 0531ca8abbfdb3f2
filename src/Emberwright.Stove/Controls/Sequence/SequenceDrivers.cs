namespace Emberwright.Stove.Controls.Sequence;

/// <summary>What turns and glows right now, found by solving the circuit; shares are of the rated value.</summary>
/// <param name="FeedShare">Mean feed, 0 … 1 of the highest.</param>
/// <param name="IgniterShare">Igniter's power, 0 … about 1.</param>
/// <param name="CombustionShare">Voltage at a turning combustion blower, 0 when it stands.</param>
/// <param name="RoomAirShare">Voltage at a turning room-air blower, 0 when it stands.</param>
/// <param name="AgitatorTurns">True while the agitator turns.</param>
/// <param name="PumpTurns">True while the circulating pump turns.</param>
public readonly record struct RunningLoads(
    double FeedShare, double IgniterShare, double CombustionShare, double RoomAirShare, bool AgitatorTurns = false, bool PumpTurns = false);

/// <summary>The stove's inner state as far as the controls can sense it.</summary>
/// <param name="SensePa">Static pressure where the sensing hose joins, against the room, Pa; negative is vacuum.</param>
/// <param name="Burning">True while there is a fire.</param>
/// <param name="BurnShare">Burning rate as a share of the highest feed.</param>
/// <param name="PotFuelShare">Fuel in the pot, in seconds of the highest feed.</param>
/// <param name="FlameC">Temperature at a thermocouple near the flame, °C.</param>
/// <param name="ExchangerC">Mean temperature that the exchanger's mass lends the exhaust, °C.</param>
/// <param name="ExhaustC">Exhaust temperature at the probe, °C.</param>
/// <param name="ProofDiscC">Temperature of the proof-of-fire disc, °C.</param>
/// <param name="LimitC">Temperature of the high-limit disc, °C.</param>
/// <param name="WaterC">Temperature of the water jacket, °C; room temperature without one.</param>
/// <param name="HeatedS">Time the igniter has worked on fuel in the pot, s.</param>
public sealed record SequenceReadings(
    double SensePa, bool Burning, double BurnShare, double PotFuelShare, double FlameC, double ExchangerC,
    double ExhaustC, double ProofDiscC, double LimitC, double WaterC, double HeatedS);

/// <summary>
/// How the stove answers what runs on it. Nothing here knows the board's program; the board knows of the stove only what these
/// readings say.
/// </summary>
public interface ISequenceDrivers
{
    /// <summary>The stove before the start, cold.</summary>
    SequenceReadings Cold { get; }

    /// <summary>The stove a step later.</summary>
    /// <param name="now">Its state now.</param>
    /// <param name="running">What runs meanwhile.</param>
    /// <param name="stepS">Length of the step, s; well below the shortest lag.</param>
    SequenceReadings Next(SequenceReadings now, in RunningLoads running, double stepS);
}

/// <summary>The stove in equilibrium, as the physics of air, fire and heat gives it.</summary>
/// <param name="SensePa">Pressure at the sensing port, Pa.</param>
/// <param name="ExhaustC">Exhaust temperature, °C.</param>
/// <param name="FlameC">Temperature at a thermocouple near the flame, °C.</param>
/// <param name="LimitC">Temperature of the high-limit disc, °C.</param>
/// <param name="WaterC">Water temperature, °C.</param>
/// <param name="Starved">True when the pot gets less air than the fuel needs.</param>
public readonly record struct SteadyPoint(double SensePa, double ExhaustC, double FlameC, double LimitC, double WaterC, bool Starved);

/// <summary>Gives the equilibrium for any fire and any speed of the blowers.</summary>
public interface ISteadyStove
{
    /// <summary>Room temperature, °C.</summary>
    double RoomC { get; }

    /// <summary>The equilibrium.</summary>
    /// <param name="burnShare">Burning rate as a share of the highest feed; 0 is no fire.</param>
    /// <param name="combustionShare">Voltage share at the combustion blower; 0 stands.</param>
    /// <param name="roomAirShare">Voltage share at the room-air blower; 0 stands.</param>
    /// <param name="pumpTurns">True while the circulating pump turns.</param>
    SteadyPoint At(double burnShare, double combustionShare, double roomAirShare, bool pumpTurns);
}
