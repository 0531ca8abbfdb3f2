// Question: which air ratio does a flue gas reading mean?
// Equations, per kg of fuel: V = stoichiometric flue gas, A = stoichiometric air with O2 share x and CO2 share k, mol,
//   both dry for a dry reading, both moist for a wet one:
//   O2:  y = (O2 − CO/2)/(1 − CO/2);  λ = 1 + y·V / (A·(x − y))
//   CO2: z = (CO2 + CO)/(1 − CO/2);  λ = 1 + (V_CO2 − z·V)/(A·(z − k)), V_CO2 the CO2 at λ = 1.
//   (burning the CO would take half its volume of oxygen and leave as much CO2.)
// Validity: O2 from 0 to below air's; CO2 above air's up to the fuel's maximum. Outside, an InputException.
//   The closer O2 is to air's, the less λ means: at 19 % an error of 0.3 % O2 is 16 % of λ.
// Assumption: no other unburnt gas.
// Source: element balance; common simplification λ = 20.95/(20.95 − O2) follows for V = A.
// Worked value: fuel with CO2max 20.3 %: O2 10.52 % dry is λ 2.

namespace Emberwright.Stove.Fire;

/// <summary>Whether water vapour counts in a gas reading's volume.</summary>
public enum Basis
{
    /// <summary>Water vapour removed before the reading, as in analysers with a water trap.</summary>
    Dry,
    /// <summary>Water vapour counted, as an in-situ probe reads.</summary>
    Wet,
}

/// <summary>Air ratio λ from what an analyser reads.</summary>
public static class AirRatio
{
    private const double RoundOff = 1e-9;

    /// <summary>λ from O2.</summary>
    /// <param name="stoichiometry">Fuel and air.</param>
    /// <param name="oxygen">O2, volume share; 0 up to below that of the air.</param>
    /// <param name="basis">Dry or wet; O2 and CO alike.</param>
    /// <param name="carbonMonoxide">CO, volume share.</param>
    /// <exception cref="InputException">O2 outside what this fuel and air can give.</exception>
    public static double FromOxygen(Stoichiometry stoichiometry, double oxygen, Basis basis, double carbonMonoxide = 0)
    {
        var (flue, air) = Amounts(stoichiometry, basis);
        var airOxygen = stoichiometry.OxygenDemandMol / air;
        InputException.Require(100 * oxygen, 0, 99.9 * airOxygen, "oxygen", $"% ({Name(basis)})",
            "Air itself reads about 20.9 %: check that the probe is in the flue gas, and re-zero the analyser in fresh air.");
        var freed = (oxygen - carbonMonoxide / 2) / (1 - carbonMonoxide / 2);
        if (freed < -RoundOff)
            throw new InputException("oxygen", $"{100 * oxygen:0.##} % is less than burning {1e6 * carbonMonoxide:0} ppm of CO would take, so λ is below 1",
                "The fire lacks air; stop the stove and check intake, burn pot and vent.");
        return 1 + Math.Max(0, freed) * flue / (air * (airOxygen - freed));
    }

    /// <summary>λ from CO2.</summary>
    /// <param name="stoichiometry">Fuel and air.</param>
    /// <param name="carbonDioxide">CO2, volume share; above that of the air, up to the fuel's maximum.</param>
    /// <param name="basis">Dry or wet; CO2 and CO alike.</param>
    /// <param name="carbonMonoxide">CO, volume share.</param>
    /// <exception cref="InputException">CO2 outside what this fuel and air can give.</exception>
    public static double FromCarbonDioxide(Stoichiometry stoichiometry, double carbonDioxide, Basis basis, double carbonMonoxide = 0)
    {
        var (flue, air) = Amounts(stoichiometry, basis);
        var most = stoichiometry.StoichiometricFlue.CarbonDioxide / flue;
        InputException.Require(100 * carbonDioxide, 0.1, 100 * most * (1 + RoundOff), "carbon dioxide", $"% ({Name(basis)})",
            "This fuel cannot give more than its maximum; check the fuel chosen and whether the analyser computes CO2 for another fuel.");
        var burnt = Math.Min(most, (carbonDioxide + carbonMonoxide) / (1 - carbonMonoxide / 2));
        var airShare = stoichiometry.StoichiometricAir.CarbonDioxide / air;
        return 1 + (stoichiometry.StoichiometricFlue.CarbonDioxide - burnt * flue) / (air * (burnt - airShare));
    }

    private static (double Flue, double Air) Amounts(Stoichiometry s, Basis basis) => basis switch
    {
        Basis.Dry => (s.StoichiometricFlue.DryMol, s.StoichiometricAir.DryMol),
        Basis.Wet => (s.StoichiometricFlue.MoistMol, s.StoichiometricAir.MoistMol),
    };

    private static string Name(Basis basis) => basis switch
    {
        Basis.Dry => "dry",
        Basis.Wet => "wet",
    };
}
