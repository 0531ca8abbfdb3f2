// Question: which pressure does a sensor's voltage mean, and which voltage should it give?
// Equation: V = V_zero + (V_full − V_zero)·(p − p_zero)/(p_full − p_zero); ratiometric sensors scale V with their supply.
// Symbols: V volts at the sensor's output; p Pa.
// Validity: between p_zero and p_full; beyond, the output stays at its end (it saturates) and a reading there is a bound only.
// Source: definition of a linear sensor; end points from the part's label.
// Worked value: 0.5 V at 0 Pa, 4.5 V at 250 Pa: 2.5 V is 125 Pa.

namespace Emberwright.Stove.Controls.Sensors;

/// <summary>A pressure sensor that answers in volts: two end points of a straight line.</summary>
public sealed record PressureSignal
{
    /// <summary>A sensor by its end points.</summary>
    /// <param name="zeroPa">Pressure of the first end, Pa.</param>
    /// <param name="zeroV">Voltage there, V.</param>
    /// <param name="fullPa">Pressure of the other end, Pa.</param>
    /// <param name="fullV">Voltage there, V.</param>
    /// <param name="ratedSupplyV">Supply at which the voltages hold, V, when the output scales with it; null when it does not.</param>
    /// <exception cref="InputException">End points that make no line.</exception>
    public PressureSignal(double zeroPa, double zeroV, double fullPa, double fullV, double? ratedSupplyV = null)
    {
        const string remedy = "Take both end points from the sensor's label.";
        InputException.Require(Math.Abs(fullPa - zeroPa), 1, 1e6, "pressure range of the sensor", "Pa", remedy);
        InputException.Require(Math.Abs(fullV - zeroV), 1e-3, 30, "voltage range of the sensor", "V", remedy);
        if (ratedSupplyV is { } supply) InputException.Require(supply, 1, 30, "rated supply of the sensor", "V", remedy);
        (ZeroPa, ZeroV, FullPa, FullV, RatedSupplyV) = (zeroPa, zeroV, fullPa, fullV, ratedSupplyV);
    }

    /// <summary>Pressure of the first end, Pa.</summary>
    public double ZeroPa { get; }

    /// <summary>Voltage at the first end, V.</summary>
    public double ZeroV { get; }

    /// <summary>Pressure of the other end, Pa.</summary>
    public double FullPa { get; }

    /// <summary>Voltage at the other end, V.</summary>
    public double FullV { get; }

    /// <summary>Supply at which the voltages hold, V; null when the output does not scale with it.</summary>
    public double? RatedSupplyV { get; }

    /// <summary>Output, V; at its end when the pressure is beyond.</summary>
    /// <param name="pressurePa">Pressure difference, Pa.</param>
    /// <param name="supplyV">Supply now, V; null takes the rated one.</param>
    public double Volts(double pressurePa, double? supplyV = null)
    {
        var share = Math.Clamp((pressurePa - ZeroPa) / (FullPa - ZeroPa), 0, 1);
        return (ZeroV + share * (FullV - ZeroV)) * Scale(supplyV);
    }

    /// <summary>Pressure, Pa.</summary>
    /// <param name="volts">Output, V; 5 % of the span beyond the ends is let pass for tolerance.</param>
    /// <param name="supplyV">Supply now, V; null takes the rated one.</param>
    /// <exception cref="InputException">The voltage is further beyond the ends: lead, supply or sensor is at fault.</exception>
    public double Pascal(double volts, double? supplyV = null)
    {
        var scale = Scale(supplyV);
        var slack = 0.05 * Math.Abs(FullV - ZeroV);
        InputException.Require(volts / scale, Math.Min(ZeroV, FullV) - slack, Math.Max(ZeroV, FullV) + slack, "pressure sensor voltage", "V",
            "Check supply, common and plug of the sensor; a good one never leaves its span.");
        return ZeroPa + (volts / scale - ZeroV) / (FullV - ZeroV) * (FullPa - ZeroPa);
    }

    private double Scale(double? supplyV) => RatedSupplyV is { } rated && supplyV is { } now
        ? InputException.Require(now, 0.5 * rated, 1.5 * rated, "supply of the pressure sensor", "V", "Measure the supply at the sensor's plug.") / rated
        : 1;
}
