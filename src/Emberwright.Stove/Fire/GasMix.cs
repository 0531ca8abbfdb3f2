// Question: how much of each gas is there, and what follows for mass, molar mass and shares?
// Equations: m = Σ nᵢMᵢ; M = m/n; share = nᵢ/n (moist) or nᵢ/(n − n_H2O) (dry); R = R₀/M.
// Symbols: n amount, mol; m mass, kg; M molar mass, kg/mol; R gas constant, J/(kg K); R₀ = 8.314462618 J/(mol K).
// Validity: ideal gas; volume shares equal mole shares. An empty mixture has no shares (NaN).
// Source: SI 2019 (R₀); IUPAC conventional atomic weights (molar masses).
// Worked value: dry air of CombustionAir.cs weighs 28.965 g/mol and has R = 287.05 J/(kg K).

namespace Emberwright.Stove.Fire;

/// <summary>The gases that occur in flue gas. Each is one column of a <see cref="GasMix"/>.</summary>
public enum Gas
{
    /// <summary>CO2.</summary>
    CarbonDioxide,
    /// <summary>Water vapour.</summary>
    Water,
    /// <summary>SO2.</summary>
    SulfurDioxide,
    /// <summary>N2, without argon.</summary>
    Nitrogen,
    /// <summary>O2.</summary>
    Oxygen,
    /// <summary>Argon.</summary>
    Argon,
    /// <summary>CO.</summary>
    CarbonMonoxide,
}

/// <summary>
/// Amounts of gases in mol. It is an amount, not a composition: shares are derived from it, wet or dry by name.
/// Adds and scales like a vector; the difference of two mixtures may hold negative amounts.
/// </summary>
/// <param name="CarbonDioxide">CO2, mol.</param>
/// <param name="Water">H2O vapour, mol.</param>
/// <param name="SulfurDioxide">SO2, mol.</param>
/// <param name="Nitrogen">N2, mol.</param>
/// <param name="Oxygen">O2, mol.</param>
/// <param name="Argon">Ar, mol.</param>
/// <param name="CarbonMonoxide">CO, mol.</param>
public readonly record struct GasMix(
    double CarbonDioxide = 0,
    double Water = 0,
    double SulfurDioxide = 0,
    double Nitrogen = 0,
    double Oxygen = 0,
    double Argon = 0,
    double CarbonMonoxide = 0)
{
    /// <summary>Molar gas constant R₀, J/(mol K).</summary>
    public const double MolarGasConstant = 8.314462618;

    /// <summary>Molar volume of an ideal gas at 0 °C and 101325 Pa, m³/mol ("normal" cubic metre).</summary>
    public const double NormalMolarVolumeM3 = MolarGasConstant * 273.15 / 101325;

    /// <summary>Amount of one gas, mol.</summary>
    public double this[Gas gas] => gas switch
    {
        Gas.CarbonDioxide => CarbonDioxide,
        Gas.Water => Water,
        Gas.SulfurDioxide => SulfurDioxide,
        Gas.Nitrogen => Nitrogen,
        Gas.Oxygen => Oxygen,
        Gas.Argon => Argon,
        Gas.CarbonMonoxide => CarbonMonoxide,
    };

    /// <summary>Total amount with water vapour, mol.</summary>
    public double MoistMol => DryMol + Water;

    /// <summary>Total amount without water vapour, mol.</summary>
    public double DryMol => CarbonDioxide + SulfurDioxide + Nitrogen + Oxygen + Argon + CarbonMonoxide;

    /// <summary>Mass with water vapour, kg.</summary>
    public double MassKg =>
        CarbonDioxide * MolarMass.CarbonDioxide + Water * MolarMass.Water + SulfurDioxide * MolarMass.SulfurDioxide
        + Nitrogen * MolarMass.Nitrogen + Oxygen * MolarMass.Oxygen + Argon * MolarMass.Argon
        + CarbonMonoxide * MolarMass.CarbonMonoxide;

    /// <summary>Mean molar mass of the moist mixture, kg/mol.</summary>
    public double MeanMolarMassKgPerMol => MassKg / MoistMol;

    /// <summary>Gas constant of the moist mixture, J/(kg K); density is p/(R·T).</summary>
    public double GasConstantJPerKgK => MolarGasConstant / MeanMolarMassKgPerMol;

    /// <summary>Volume share of a gas in the moist mixture, 0 … 1.</summary>
    public double WetShare(Gas gas) => this[gas] / MoistMol;

    /// <summary>Volume share of a gas in the mixture without its water vapour, 0 … 1; water itself has none (0).</summary>
    public double DryShare(Gas gas) => gas == Gas.Water ? 0 : this[gas] / DryMol;

    /// <summary>Mass share of a gas in the moist mixture, 0 … 1.</summary>
    public double MassShare(Gas gas) => this[gas] * MolarMass.Of(gas) / MassKg;

    /// <summary>Both mixtures together.</summary>
    public static GasMix operator +(GasMix a, GasMix b) => new(
        a.CarbonDioxide + b.CarbonDioxide, a.Water + b.Water, a.SulfurDioxide + b.SulfurDioxide, a.Nitrogen + b.Nitrogen,
        a.Oxygen + b.Oxygen, a.Argon + b.Argon, a.CarbonMonoxide + b.CarbonMonoxide);

    /// <summary>The first without the second.</summary>
    public static GasMix operator -(GasMix a, GasMix b) => a + -1 * b;

    /// <summary>So many times the mixture.</summary>
    public static GasMix operator *(double times, GasMix a) => new(
        times * a.CarbonDioxide, times * a.Water, times * a.SulfurDioxide, times * a.Nitrogen,
        times * a.Oxygen, times * a.Argon, times * a.CarbonMonoxide);
}
