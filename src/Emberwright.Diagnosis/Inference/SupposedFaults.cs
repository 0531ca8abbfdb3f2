// Question:    which discrete faults are supposed, and from which epoch is each gone?
// Equations:   a fault that nothing cured: rate r. A fault whose cure was done in epoch e: rate r(1 − q), gone from e, and
//              beside it the same fault with rate r·q that outlasted the cure; q = Π of the shares of cures that miss.
// Symbols:     r rate in % of breakdown calls; q share of cures of that kind after which the fault is still there.
// Validity:    q between 0 and 1.
// Assumptions: a service passes over one small thing in ten, a cleaning of one part over one in seventeen, a reset does not last
//              one time in ten, a refit fails one time in twenty-five, a new part is as bad as the old one time in fifty.
// Source:      judgement from memory, no source.
// Worked:      rate 3, one full service: 2.7 gone and 0.3 outlasting it.
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>A discrete fault as it is supposed on this visit.</summary>
/// <param name="Fault">The fault, its rate that of this supposition.</param>
/// <param name="CuredIn">First epoch in which it is gone; int.MaxValue when nothing cured it or it outlasted the cure.</param>
internal sealed record SupposedFault(Fault Fault, int CuredIn)
{
    /// <summary>The faults as supposed: all of the pattern, then those that outlasted what was done.</summary>
    /// <param name="faults">Discrete faults of the pattern.</param>
    /// <param name="plan">What each epoch cured.</param>
    public static IReadOnlyList<SupposedFault> Of(IEnumerable<Fault> faults, EpochPlan plan)
    {
        var all = new List<SupposedFault>();
        var outlasting = new List<SupposedFault>();
        foreach (var fault in faults)
        {
            var missed = plan.Missed(fault.Id);
            if (missed == 0)
            {
                all.Add(new SupposedFault(fault, plan.CuredIn(fault.Id)));
                continue;
            }
            all.Add(new SupposedFault(fault with { BaseRatePercent = fault.BaseRatePercent * (1 - missed) }, plan.CuredIn(fault.Id)));
            outlasting.Add(new SupposedFault(fault with { BaseRatePercent = fault.BaseRatePercent * missed }, int.MaxValue));
        }
        return [.. all, .. outlasting];
    }

    /// <summary>Share of cures of a kind after which the fault is still there.</summary>
    public static double Missed(RemedyKind kind, bool everything) => kind switch
    {
        RemedyKind.Clean => everything ? 0.1 : 0.06,
        RemedyKind.Reset => 0.1,
        RemedyKind.Adjust => 0.04,
        RemedyKind.Replace => 0.02,
        RemedyKind.Advise => 0.1,
    };
}
