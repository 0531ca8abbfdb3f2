// Question: what heat does one mole of a gas hold at a temperature?
// Equation: cp = A + Bt + Ct² + Dt³ + E/t²; h − h(25 °C) = At + Bt²/2 + Ct³/3 + Dt⁴/4 − E/t + F − H.
// Symbols: t = T/1000, T in K; cp in J/(mol K); h in kJ/mol.
// Validity: 200 … 2000 K. Below 298 K the CO2, CO and SO2 ranges, and below 500 K the H2O range, are carried
//   downwards; cp of H2O at 298 K is then 33.590, the JANAF table value, cp of CO2 at 200 K 31.3 against 32.4.
// Source: NIST Chemistry WebBook, gas phase thermochemistry (fits to Chase, NIST-JANAF Tables, 4th ed. 1998).
// Worked value: O2 at 500 K: cp 31.091 J/(mol K), h 6.084 kJ/mol (JANAF).

namespace Emberwright.Stove.Fire;

/// <summary>Coefficients of the Shomate equation for one gas over one temperature range.</summary>
/// <param name="UpToK">Upper end of the range, K.</param>
/// <param name="A">Constant of cp, J/(mol K).</param>
/// <param name="B">Linear coefficient.</param>
/// <param name="C">Quadratic coefficient.</param>
/// <param name="D">Cubic coefficient.</param>
/// <param name="E">Coefficient of 1/t².</param>
/// <param name="F">Integration constant less the enthalpy of formation (F − H of the tables), kJ/mol.</param>
internal readonly record struct Shomate(double UpToK, double A, double B, double C, double D, double E, double F)
{
    /// <summary>The ranges of one gas, coldest first.</summary>
    public static ReadOnlySpan<Shomate> Of(Gas gas) => gas switch
    {
        Gas.CarbonDioxide => CarbonDioxide,
        Gas.Water => Water,
        Gas.SulfurDioxide => SulfurDioxide,
        Gas.Nitrogen => Nitrogen,
        Gas.Oxygen => Oxygen,
        Gas.Argon => Argon,
        Gas.CarbonMonoxide => CarbonMonoxide,
    };

    private static readonly Shomate[] CarbonDioxide =
    [
        new(1200, 24.99735, 55.18696, -33.69137, 7.948387, -0.136638, -403.6075 + 393.5224),
        new(6000, 58.16639, 2.720074, -0.492289, 0.038844, -6.447293, -425.9186 + 393.5224),
    ];

    private static readonly Shomate[] Water =
    [
        new(1700, 30.09200, 6.832514, 6.793435, -2.534480, 0.082139, -250.8810 + 241.8264),
        new(6000, 41.96426, 8.622053, -1.499780, 0.098119, -11.15764, -272.1797 + 241.8264),
    ];

    private static readonly Shomate[] SulfurDioxide =
    [
        new(1200, 21.43049, 74.35094, -57.75217, 16.35534, 0.086731, -305.7688 + 296.8422),
        new(6000, 57.48188, 1.009328, -0.076290, 0.005174, -4.045401, -324.4140 + 296.8422),
    ];

    private static readonly Shomate[] Nitrogen =
    [
        new(500, 28.98641, 1.853978, -9.647459, 16.63537, 0.000117, -8.671914),
        new(2000, 19.50583, 19.88705, -8.598535, 1.369784, 0.527601, -4.935202),
    ];

    private static readonly Shomate[] Oxygen =
    [
        new(700, 31.32234, -20.23531, 57.86644, -36.50624, -0.007374, -8.903471),
        new(2000, 30.03235, 8.772972, -3.988133, 0.788313, -0.741599, -11.32468),
    ];

    private static readonly Shomate[] Argon =
    [
        new(6000, 20.78600, 2.825911e-7, -1.464191e-7, 1.092131e-8, -3.661371e-8, -6.197350),
    ];

    private static readonly Shomate[] CarbonMonoxide =
    [
        new(1300, 25.56759, 6.096130, 4.054656, -2.671301, 0.131021, -118.0089 + 110.5271),
        new(6000, 35.15070, 1.300095, -0.205921, 0.013550, -3.282780, -127.8375 + 110.5271),
    ];
}
