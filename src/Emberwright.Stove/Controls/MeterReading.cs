namespace Emberwright.Stove.Controls;

/// <summary>How the knob of the meter stands.</summary>
public enum MeterFunction
{
    /// <summary>Alternating volts.</summary>
    AcVolts,
    /// <summary>Alternating volts at low input impedance, which loads ghost voltages away.</summary>
    AcVoltsLowImpedance,
    /// <summary>Direct volts.</summary>
    DcVolts,
    /// <summary>Direct millivolts.</summary>
    DcMillivolts,
    /// <summary>Alternating amps by clamp.</summary>
    AcAmps,
    /// <summary>Ohms; plug out only.</summary>
    Ohms,
    /// <summary>Ohms to earth; plug out only.</summary>
    OhmsToEarth,
    /// <summary>Continuity; plug out only.</summary>
    Continuity,
    /// <summary>Capacitance of a capacitor with its leads off; plug out and discharged only.</summary>
    Capacitance,
}

/// <summary>What a meter would show. It is a prediction, not a recorded reading.</summary>
/// <param name="Function">How the knob stands.</param>
/// <param name="Measure">Kind of quantity, which also states its SI unit.</param>
/// <param name="Value">
/// Value in the measure's SI unit (V, A, Ω, F); positive infinity is the meter's overload sign (open); NaN when refused.
/// </param>
/// <param name="Tolerance">Half width that holds about 95 % of healthy parts and meters, in the same unit.</param>
/// <param name="Refused">True when this must not be measured in this state; <see cref="Caution"/> says why.</param>
/// <param name="Caution">What can hurt, or null.</param>
/// <param name="Note">What the number means or does not mean, or null.</param>
public sealed record MeterReading(
    MeterFunction Function, Measure Measure, double Value, double Tolerance,
    bool Refused = false, string? Caution = null, string? Note = null)
{
    /// <summary>True when a continuity test would sound: below 40 Ω (common practice, no source).</summary>
    public bool Sounds => Function == MeterFunction.Continuity && Value < 40;
}
