// Question:    how do the readings of one visit scatter round a model that is right, and how far is the model itself off?
// Equations:   R = diag(instrument² + drift²) + Σ over places and conditions of d·dᵀ + gauge offset²·1·1ᵀ (pressures);
//              d_i = 0.4 Pa + 4 % of reading i for pressures, a constant for the other measures.
// Symbols:     R covariance, in the square of each reading's unit; CO is compared in ln ppm.
// Validity:    field instruments: ±1 Pa gauges, flue analysers, K-type thermometers.
// Assumptions: the model's error at one place and condition is the same each time it is read, so repeating a reading
//              averages the instrument and the wind but not the model.
// Source:      widths are judgement from memory, to be replaced by what closed visits show.
// Worked:      two readings of −20 Pa at one firebox port: d = 0.4 + 0.8 = 1.2 Pa, so their covariance is 1.44 + 0.49 Pa².
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Standard deviations of readings and of the model at them.</summary>
internal static class Noise
{
    /// <summary>Common offset of one gauge on one visit, Pa.</summary>
    public const double GaugeOffsetPa = 0.7;

    /// <summary>Standard deviation of a single reading's own scatter, instrument and wind drift together.</summary>
    public static double Own(Observable observable, double value) => observable.Measure switch
    {
        Measure.Pressure => Hypot(1, observable.Place switch
        {
            Places.Collar => 0.8,
            Places.BlowerInlet => 0.3,
            _ => 0.5,
        }),
        Measure.Oxygen or Measure.CarbonDioxide => 0.3,
        Measure.Temperature => 4,
        Measure.CarbonMonoxide => 0.15,
        Measure.Speed => 20 + 0.01 * Math.Abs(value),
        Measure.Feed => 0.03 + 0.03 * Math.Abs(value),
        Measure.Flow or Measure.Duration => 0.05 * Math.Abs(value) + 1e-6,
        Measure.Voltage => 1 + 0.015 * Math.Abs(value),
        Measure.Current => 0.02 + 0.03 * Math.Abs(value),
        Measure.Resistance => 0.5 + 0.02 * Math.Abs(value),
        Measure.Capacitance => 2e-8 + 0.02 * Math.Abs(value),
    };

    /// <summary>Standard deviation of what the model is off by, shared by all readings of one place and condition.</summary>
    public static double Model(Observable observable, double value) => observable.Measure switch
    {
        Measure.Pressure => 0.4 + 0.04 * Math.Abs(value),
        Measure.Oxygen or Measure.CarbonDioxide => 0.25,
        Measure.Temperature => 5,
        Measure.CarbonMonoxide => 0.6,
        Measure.Speed => 0.03 * Math.Abs(value),
        Measure.Feed => 0.04 * Math.Abs(value),
        Measure.Flow or Measure.Duration => 0.15 * Math.Abs(value),
        Measure.Voltage => 0.02 * Math.Abs(value),
        Measure.Current => 0.10 * Math.Abs(value),
        Measure.Resistance => 0.08 * Math.Abs(value),
        Measure.Capacitance => 0.04 * Math.Abs(value),
    };

    /// <summary>How far a grossly wrong reading lies off, as a standard deviation.</summary>
    public static double Gross(Measure measure, double value) => measure switch
    {
        Measure.Pressure => 25 + 0.3 * Math.Abs(value),
        Measure.Oxygen or Measure.CarbonDioxide => 4.6,
        Measure.Temperature => 70,
        Measure.CarbonMonoxide => 2,
        _ => 0.5 * Math.Abs(value) + 1e-3,
    };

    /// <summary>How far an unlisted cause throws a reading off, as a standard deviation.</summary>
    public static double Unlisted(Measure measure, double value) => measure switch
    {
        Measure.Pressure => 4 + 0.2 * Math.Abs(value),
        Measure.Oxygen or Measure.CarbonDioxide => 2,
        Measure.Temperature => 25,
        Measure.CarbonMonoxide => 1,
        _ => 0.15 * Math.Abs(value) + 1e-3,
    };

    /// <summary>The reading as it is compared: ln ppm for CO, the value itself for the others.</summary>
    public static double Compared(Measure measure, double value) =>
        measure == Measure.CarbonMonoxide ? Math.Log(Math.Max(value, 1)) : value;

    private static double Hypot(double a, double b) => Math.Sqrt(a * a + b * b);
}
