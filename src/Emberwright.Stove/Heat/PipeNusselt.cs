// How well does gas in a pipe heat the wall?
//   turbulent  Nu = 0.0214·(Re^0.8 − 100)·Pr^0.4      laminar  Nu = 4.36
// Nu = h·D/k Nusselt number; h heat transfer coefficient, W/(m²·K); k 0.0263·(T/300)^0.8 W/(m·K) for air and flue gas.
// Valid 0.5 < Pr < 1.5, 1e4 < Re < 5e6; towards 2300 the turbulent form is followed until it meets the laminar value.
// Source: Gnielinski, Int. Chem. Eng. 16 (1976) 359, simplified form for gases; laminar constant-flux value from any text.
// Worked value: Re 1e5, Pr 1.2 → 227.888 (Lienhard, A Heat Transfer Textbook, eq. 7.43a's companion for gases).
namespace Emberwright.Stove.Heat;

/// <summary>Nusselt number of gas in a pipe.</summary>
public static class PipeNusselt
{
    private const double Laminar = 4.36;
    private const double GasPrandtl = 0.7;

    /// <summary>Nusselt number, –.</summary>
    /// <param name="reynolds">Reynolds number, –; &gt; 0.</param>
    /// <param name="prandtl">Prandtl number, –.</param>
    public static double Of(double reynolds, double prandtl) =>
        Math.Max(Laminar, 0.0214 * (Math.Pow(reynolds, 0.8) - 100) * Math.Pow(prandtl, 0.4));

    /// <summary>Heat transfer coefficient of gas to the wall, W/(m²·K).</summary>
    /// <param name="reynolds">Reynolds number, –.</param>
    /// <param name="diameterM">Diameter, m.</param>
    /// <param name="gasK">Gas temperature, K.</param>
    public static double CoefficientWPerM2K(double reynolds, double diameterM, double gasK) =>
        Of(reynolds, GasPrandtl) * 0.0263 * Math.Pow(gasK / 300, 0.8) / diameterM;
}
