// How does a blower motor's speed follow its supply voltage?
//   1 − n = k·n²/v²,   k = (1 − n₀)/n₀²    so   n = v²/(2k)·(√(1 + 4k/v²) − 1)
// n speed over synchronous speed, –; n₀ that at rated voltage, –; v voltage over rated voltage, –.
// Slip rises with torque and falls with voltage squared (small slip); torque of a fan rises with speed squared.
// Under another load than a clean fan's, torque m times it: 1 − n = k·m·n².
// Valid v 0.5 … 1.3; below, a real motor stalls. Assumes an induction motor (shaded pole, capacitor) without speed control.
// Source: slip relation of induction motors at small slip, any text on electrical machines; n₀ 0.79 from memory.
// Worked value: v 1 → n = n₀.
namespace Emberwright.Stove.Air;

/// <summary>Speed of a fan motor at a supply voltage.</summary>
public static class MotorSlip
{
    private const double RatedShare = 0.79;
    private const double K = (1 - RatedShare) / (RatedShare * RatedShare);

    /// <summary>Speed over the speed under the clean fan's load, at rated voltage, –: less load, more speed.</summary>
    /// <param name="load">Torque over the clean fan's at the same speed, –; &gt; 0.</param>
    public static double SpeedShareUnderLoad(double load)
    {
        var k = K * Math.Max(load, 1e-3);
        return (Math.Sqrt(1 + (4 * k)) - 1) / (2 * k * RatedShare);
    }

    /// <summary>Speed over the speed at rated voltage, –.</summary>
    /// <param name="voltageRatio">Voltage over rated voltage, –; &gt; 0.</param>
    /// <param name="logSlope">d ln speed / d ln voltage.</param>
    public static double SpeedRatio(double voltageRatio, out double logSlope)
    {
        var v2 = voltageRatio * voltageRatio;
        var n = v2 / (2 * K) * (Math.Sqrt(1 + (4 * K / v2)) - 1);
        var slip = 2 * K * n / v2;
        logSlope = slip / (1 + slip);
        return n / RatedShare;
    }
}
