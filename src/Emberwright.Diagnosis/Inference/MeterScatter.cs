// Question:    how probable is a volt, amp or ohm reading given what the circuit should show?
// Equations:   volts and amps: N(y; p, own² + model²), widths of Noise at p; ohms: ln y ~ N(ln p, 0.12²), with
//              "open" (above 1 MΩ) an outcome of its own that is right 98 times in 100.
// Symbols:     y reading, p prediction, in V, A or Ω.
// Validity:    field meters.
// Assumptions: none beyond the widths, which are judgement from memory.
// Source:      from memory.
// Worked:      120 V read, 120 V predicted: sd = √(2.8² + 2.4²) = 3.69 V, ln density −2.22 (by hand).
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Scatter of meter readings round the circuit's prediction.</summary>
internal static class MeterScatter
{
    private const double OpenOhm = 1e6;
    private const double SayOpenRightly = 0.98;

    /// <summary>ln of the density of a reading given its prediction.</summary>
    public static double LnDensity(Observable observable, double reading, double predicted)
    {
        if (observable.Measure == Measure.Resistance)
        {
            var (readsOpen, isOpen) = (!(reading < OpenOhm), !(predicted < OpenOhm));
            var ln = Math.Log(Math.Max(reading, 0.05));
            return (readsOpen, isOpen) switch
            {
                (true, true) => Math.Log(SayOpenRightly),
                (true, false) => Math.Log(1 - SayOpenRightly),
                (false, true) => Math.Log(1 - SayOpenRightly) + Normal.LnDensity(ln, Math.Log(50), 4),
                (false, false) => Math.Log(SayOpenRightly) + Normal.LnDensity(ln, Math.Log(Math.Max(predicted, 0.05)), 0.12 * 0.12 + Square(0.5 / (0.5 + Math.Max(predicted, 0)))),
            };
        }
        if (observable.Measure == Measure.Capacitance)
        {
            // In µF, so that densities stay of the order of the other meters'; a shorted one shows overload.
            var (over, isOver) = (double.IsInfinity(reading), double.IsInfinity(predicted));
            if (over || isOver) return Math.Log(over == isOver ? SayOpenRightly : 1 - SayOpenRightly);
            return Math.Log(SayOpenRightly) + Normal.LnDensity(1e6 * reading, 1e6 * predicted, 1e12 * (Square(Noise.Own(observable, predicted)) + Square(Noise.Model(observable, predicted))));
        }
        return Normal.LnDensity(reading, predicted, Square(Noise.Own(observable, predicted)) + Square(Noise.Model(observable, predicted)));
    }

    /// <summary>ln of the density of a reading that has nothing to do with the stove.</summary>
    /// <param name="observable">What was read.</param>
    /// <param name="supplyV">Rated mains voltage, V.</param>
    public static double LnIfLapse(Observable observable, double supplyV) => observable.Measure switch
    {
        Measure.Voltage => -Math.Log(1.2 * supplyV),
        Measure.Current => -Math.Log(5),
        _ => -Math.Log(12),
    };

    private static double Square(double x) => x * x;
}
