// How much does the combustion blower raise the pressure at a given flow and speed?
//   Δp = (ρ/ρ0)·[ h·p0·s² − a·s·Q − b·Q·|Q| ]
// Δp total pressure rise, Pa; ρ gas density at its inlet, ρ0 density of the curve, kg/m³; Q volume flow, m³/s;
// s speed over the curve's speed, –; h head factor of the wheel, – (1 clean); p0 shut-off pressure, Pa;
// a ≥ 0, Pa·s/m³; b > 0, Pa·s²/m⁶.
// The form obeys the fan laws exactly (Q ∝ s, Δp ∝ s²·ρ). Deposit on the wheel lowers h, never the drag.
// Valid for forward and reverse flow and for s = 0 (a stopped wheel is a resistance); smooth at Q = 0.
// Assumes a curve that falls with flow: a measured one that rises first is replaced by its monotone envelope.
// Source: fan laws, Crane TP-410 example 7.33 (126 ft, 400 gpm at 3500 rpm → 29.7257 ft, 194.2857 gpm at 1700).
// Worked value: p0 80, a 1750, b 53 000, ρ = ρ0, s 1, Q 0.007 m³/s → 80 − 12.25 − 2.60 = 65.15 Pa.
namespace Emberwright.Stove.Air;

/// <summary>Pressure rise of a combustion blower with its motor over flow, at the speed it is rated for.</summary>
/// <param name="ShutOffPa">Pressure rise at no flow, Pa; &gt; 0.</param>
/// <param name="Linear">a, Pa·s/m³; ≥ 0.</param>
/// <param name="Quadratic">b, Pa·s²/m⁶; &gt; 0.</param>
/// <param name="DensityKgPerM3">Density at which the curve holds, kg/m³.</param>
public sealed record FanCurve(double ShutOffPa, double Linear, double Quadratic, double DensityKgPerM3 = 1.2)
{
    /// <summary>Total pressure rise, Pa.</summary>
    /// <param name="flowM3PerS">Volume flow at the inlet, m³/s; negative when gas runs backwards through it.</param>
    /// <param name="speedRatio">Speed over the curve's speed, – ; ≥ 0.</param>
    /// <param name="densityKgPerM3">Gas density at the inlet, kg/m³.</param>
    /// <param name="headFactor">Head factor of the wheel, – ; 1 is clean.</param>
    public double RisePa(double flowM3PerS, double speedRatio, double densityKgPerM3, double headFactor = 1) =>
        densityKgPerM3 / DensityKgPerM3 * ((headFactor * ShutOffPa * speedRatio * speedRatio)
            - (Linear * speedRatio * flowM3PerS) - (Quadratic * flowM3PerS * Math.Abs(flowM3PerS)));
}
