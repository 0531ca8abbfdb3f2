namespace Emberwright.Stove.Fire;

/// <summary>Molar masses in kg/mol from the conventional atomic weights of IUPAC (C 12.011, H 1.008, O 15.999, N 14.007, S 32.06, Ar 39.948).</summary>
public static class MolarMass
{
    /// <summary>C.</summary>
    public const double Carbon = 12.011e-3;
    /// <summary>H, one atom.</summary>
    public const double HydrogenAtom = 1.008e-3;
    /// <summary>O, one atom.</summary>
    public const double OxygenAtom = 15.999e-3;
    /// <summary>N, one atom.</summary>
    public const double NitrogenAtom = 14.007e-3;
    /// <summary>S.</summary>
    public const double Sulfur = 32.06e-3;
    /// <summary>Ar.</summary>
    public const double Argon = 39.948e-3;
    /// <summary>O2.</summary>
    public const double Oxygen = 2 * OxygenAtom;
    /// <summary>N2.</summary>
    public const double Nitrogen = 2 * NitrogenAtom;
    /// <summary>CO2.</summary>
    public const double CarbonDioxide = Carbon + 2 * OxygenAtom;
    /// <summary>CO.</summary>
    public const double CarbonMonoxide = Carbon + OxygenAtom;
    /// <summary>H2O.</summary>
    public const double Water = 2 * HydrogenAtom + OxygenAtom;
    /// <summary>SO2.</summary>
    public const double SulfurDioxide = Sulfur + 2 * OxygenAtom;

    /// <summary>Molar mass of a gas, kg/mol.</summary>
    public static double Of(Gas gas) => gas switch
    {
        Gas.CarbonDioxide => CarbonDioxide,
        Gas.Water => Water,
        Gas.SulfurDioxide => SulfurDioxide,
        Gas.Nitrogen => Nitrogen,
        Gas.Oxygen => Oxygen,
        Gas.Argon => Argon,
        Gas.CarbonMonoxide => CarbonMonoxide,
    };
}
