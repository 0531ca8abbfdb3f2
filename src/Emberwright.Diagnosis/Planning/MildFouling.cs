// Where no listed fault accounts for a complaint: how probable is it that fouling short of every limit does, so that a service cures it?
// Equation: q = a·A·(1 − b)/(a·A + (1 − a)·u) where the complaint is a stop that the burn sequence knows;
//           a = 1/2 where the stove stops with every restriction at its mean, Φ(−½√7) where only with each of the seven half a
//           standard deviation worse, else Φ(−2); b = 1 where it stops also when they are put back to what a service leaves.
//           Any other complaint: q = Σ_{f fouls} r_f·P(c | f) / Σ_f r_f·P(c | f).
// Symbols: a, b probability that this stove stops as it is and when serviced; A share of customers who tell the stop as it was;
//          u probability that a stove that runs is complained of so; r_f base rate of fault f; c complaint.
// Validity: any posterior of the unknowns; restrictions are kept short of their limits, since none is past one.
// Assumptions: restrictions that stop the stove together are worse together; what is not dirt stays at its mean.
// Source: Bayes' rule; the stops are those of the burn sequence itself.
// Worked: a = 1/2, b = 0, A = .85, u = .018: q = .425/(.425 + .009) = .979.
using Emberwright.Diagnosis.Inference;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>Whether several mild foulings together account for a complaint.</summary>
internal static class MildFouling
{
    private const double RunS = 2 * 3600;
    private const double Least = 1e-3;
    private static readonly double[] Worse = [0, 0.5];

    /// <summary>Probability that a service cures a complaint for which nothing past its limit accounts.</summary>
    /// <param name="stove">The stove.</param>
    /// <param name="complaint">The complaint.</param>
    /// <param name="catalogue">Faults and signs of its pattern.</param>
    /// <param name="mode">What is believed of its unknowns where no fault is supposed.</param>
    /// <param name="epoch">Now.</param>
    public static double Cures(StoveCase stove, string complaint, Catalogue catalogue, Mode mode, int epoch)
    {
        if (!SequenceSymptoms.Word.Values.Contains(complaint)) return ByRates(complaint, catalogue);
        var real = new VirtualStove(stove.Pattern, stove.Card, stove.Site);
        bool Stops(double? worse) => SequenceSymptoms.Word.GetValueOrDefault(
            BurnForecast.Run(real, Parameters(mode, catalogue, epoch, worse), new BurnScenario(), RunS).Outcome) is not null;
        var at = Array.FindIndex(Worse, w => Stops(w));
        var stops = at < 0 ? Normal.Below(-2) : Normal.Below(-Worse[at] * Math.Sqrt(PriorTable.Fouling.Length));
        if (at >= 0 && Stops(null)) return 0;
        var usual = catalogue.Sign(Complaints.Sign)!.Outcomes.First(o => o.Id == complaint).Usual;
        var told = stops * SequenceSymptoms.AsItWas;
        return told / (told + (1 - stops) * (1 - SignTable.SoundComplainsOfNothing) * Math.Max(usual, Least));
    }

    /// <summary>The share of fouling among everything that is complained of so.</summary>
    private static double ByRates(string complaint, Catalogue catalogue)
    {
        var (dirt, all) = (0.0, Least);
        foreach (var fault in catalogue.Faults)
        {
            var told = fault.BaseRatePercent * fault.Symptoms.Where(s => s.Sign == Complaints.Sign && s.Outcome == complaint).Sum(s => s.Probability);
            all += told;
            if (fault.Fouling is not null) dirt += told;
        }

        return dirt / all;
    }

    // Restrictions so many standard deviations above their mean, or as a service leaves them.
    private static double[] Parameters(Mode mode, Catalogue catalogue, int epoch, double? worse)
    {
        var layout = mode.Problem.Layout;
        var n = layout.Count;
        var point = (double[])mode.Mean.Clone();
        foreach (var parameter in PriorTable.Fouling)
        {
            var k = layout.IndexOf(UnknownKind.Restriction, parameter, epoch);
            if (k < 0) continue;
            var limit = catalogue.Faults.Where(f => f.Fouling?.Parameter == parameter).Select(f => -f.Fouling!.Limit).DefaultIfEmpty(double.PositiveInfinity).Min();
            var mean = Math.Clamp(mode.Mean[k], 0, limit);
            point[k] = worse is { } w ? Math.Min(mean + w * Math.Sqrt(mode.Covariance[k * n + k]), limit) : Math.Min(mean, PriorTable.Serviced(parameter));
        }

        var parameters = new double[Layout.Parameters];
        layout.Fill(point, epoch, parameters);
        return parameters;
    }
}
