// What is worth asking on the telephone, what is to be told, and what is to be put on the van?
// A part is worth bringing by P(needed)·c₂, P(needed) = Σ P(f) over the faults it cures whose remedy is a new part.
// Time to book = getting there and back out of the way: arrival + four areas + Σ_f P(f)·m_f + proving, up to a quarter of an hour.
// Symbols: c₂ cost of a second trip; m_f minutes of a fault's remedy beyond cleaning.
// Validity: any posterior. Probabilities below 2 % (parts) and 5 % (tools) are left out.
// Assumptions: whatever is needed and not there costs one more trip; tools are needed in proportion to what they prove.
// Source: expected value of carrying a part, common practice, no source.
// Worked: igniter needed with 40 %, second trip 90: worth 36.
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Safety;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>What a call comes to.</summary>
/// <param name="Emergency">Question asked before any other, with what the answers so far call for.</param>
/// <param name="Questions">What to ask next, best first; empty while an emergency stands or when nothing more is worth asking.</param>
/// <param name="Advice">What to tell the customer, in the order to say it.</param>
/// <param name="Booking">What to agree for the visit; empty while an emergency stands.</param>
/// <param name="Minutes">Minutes to keep free for the visit.</param>
/// <param name="Parts">Parts to put on the van, most worth bringing first.</param>
/// <param name="Tools">Tools that likely checks need, likeliest first.</param>
public sealed record CallPlan(
    Emergency Emergency,
    IReadOnlyList<RecommendedCheck> Questions,
    IReadOnlyList<string> Advice,
    IReadOnlyList<string> Booking,
    double Minutes,
    IReadOnlyList<PartToBring> Parts,
    IReadOnlyList<ToolToBring> Tools);

/// <summary>The emergency branch of a call.</summary>
/// <param name="Question">The sign that is asked first.</param>
/// <param name="Asked">True once it has been answered.</param>
/// <param name="Stands">True when people must leave now.</param>
/// <param name="Say">What to say at once; empty when nothing calls for it.</param>
public sealed record Emergency(Sign Question, bool Asked, bool Stands, IReadOnlyList<string> Say);

/// <summary>A part to put on the van.</summary>
/// <param name="Action">Id of the action that fits it.</param>
/// <param name="Name">The work in words.</param>
/// <param name="Probability">Probability that it is needed, 0…1.</param>
/// <param name="Worth">Probability × cost of a second trip, in the firm's currency.</param>
/// <param name="OnVan">How often such a part is on the van anyway, 0…1.</param>
public sealed record PartToBring(string Action, string Name, double Probability, double Worth, double OnVan);

/// <summary>A tool that likely checks need.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Probability">Probability that a check needing it is called for, 0…1.</param>
/// <param name="For">The likeliest check that needs it.</param>
public sealed record ToolToBring(Tool Tool, double Probability, string For);

/// <summary>Plans a telephone call: the emergency branch, the questions still worth asking, what to tell, what to bring.</summary>
public static class Call
{
    private const int Questions = 4;
    private const double LeastPart = 0.02;
    private const double LeastTool = 0.05;
    private const double LeastFix = 0.04;
    private const double LikelyByPhone = 0.5;
    private const double Arriving = 20;
    private const double Proving = 45;
    private const double Quarter = 15;
    private const double Dangerous = 0.1;

    private static readonly string[] Leave =
    [
        "Everybody out into fresh air now, pets too; do not look for the cause.",
        "Call the emergency number from outside.",
        "Leave the hopper lid shut. Do not pull the plug first: the blower carries the smoke out.",
        "Do not go back in until the fire service says so. Somebody with a headache or nausea sees a physician today.",
    ];

    /// <summary>The plan from all that is known.</summary>
    /// <param name="catalogue">What can be wrong and what can be done on this pattern.</param>
    /// <param name="tariff">What time and trips cost.</param>
    /// <param name="predictive">What is believed and what it predicts.</param>
    /// <param name="situation">What is known so far; whether somebody is on site does not matter.</param>
    public static CallPlan Plan(Catalogue catalogue, Tariff tariff, IPredictive predictive, Situation situation)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(tariff);
        ArgumentNullException.ThrowIfNull(predictive);
        ArgumentNullException.ThrowIfNull(situation);
        var weights = Marginals(predictive);
        var emergency = EmergencyOf(catalogue, situation);
        if (emergency.Stands) return new CallPlan(emergency, [], [], [], 0, [], []);
        return new CallPlan(
            emergency,
            QuestionsOf(catalogue, tariff, predictive, situation),
            AdviceOf(catalogue, weights, situation),
            BookingOf(catalogue, weights, situation),
            MinutesOf(catalogue, weights),
            PartsOf(catalogue, tariff, weights, predictive),
            ToolsOf(catalogue, weights));
    }

    private static Emergency EmergencyOf(Catalogue catalogue, Situation situation)
    {
        var urgent = situation.Stops.Select(s => SafetyRules.Find(s.Rule)).OfType<SafetyRule>().Where(r => r.Urgency == Urgency.Evacuate).ToList();
        var told = situation.Evidence.OfType<SignEvidence>();
        // Told meanwhile that the alarm is silent and everybody is well: no longer an evacuation, and still no use of the stove.
        var over = told.Any(e => e.Sign == "ill" && e.Outcome == "no") && urgent.All(r => r.Id == "co-alarm");
        var stands = urgent.Count > 0 && !over;
        return new Emergency(
            catalogue.Sign(EmergencySign.Id)!, told.Any(e => e.Sign == EmergencySign.Id), stands,
            stands ? Leave : []);
    }

    private static IReadOnlyList<RecommendedCheck> QuestionsOf(Catalogue catalogue, Tariff tariff, IPredictive predictive, Situation situation)
    {
        var calling = situation with { OnSite = false, Stops = [] };
        if (!calling.Concern) return [];
        var next = new Planner(catalogue, tariff).Next(predictive, calling, Questions - 1);
        return next.Best is { } best ? [best, .. next.Alternatives] : [];
    }

    private static List<string> AdviceOf(Catalogue catalogue, IReadOnlyDictionary<string, double> weights, Situation situation)
    {
        var advice = new List<string>();
        var dangerous = weights.Where(w => catalogue.Fault(w.Key)?.SafetyStop is not null).Sum(w => w.Value);
        if (situation.Stops.Count > 0) advice.Add($"Do not use the stove until it has been seen. {situation.Stops[0].Words}");
        else if (dangerous >= Dangerous) advice.Add("Leave the stove off until it has been seen: what is suspected can let exhaust or fire out.");
        advice.AddRange(weights.Where(w => w.Value >= LeastFix).OrderByDescending(w => w.Value).Select(w => PhoneFixes.For(w.Key)).OfType<string>().Distinct().Take(3));
        advice.Add("Do not open panels, press resets or clean it before the visit: what is found tells the cause.");
        advice.Add("If a CO alarm sounds, somebody feels unwell or smoke comes into the room: everybody out, then call the emergency number.");
        return advice;
    }

    private static List<string> BookingOf(Catalogue catalogue, IReadOnlyDictionary<string, double> weights, Situation situation)
    {
        var byPhone = weights.Where(w => PhoneFixes.For(w.Key) is not null).Sum(w => w.Value);
        var booking = new List<string>();
        if (byPhone >= LikelyByPhone && situation.Stops.Count == 0) booking.Add("First let them try what is told above; book only when that does not help.");
        booking.AddRange([
            "Switch it off at its own button three hours before and let it burn out; do not pull the plug.",
            "A metre of room in front and beside it; pets and small children in another room.",
            "Somebody of age at home who can agree to the price of a repair and sign.",
            "The breaker's place, the way to the pipe's end outdoors, and whether it needs a ladder.",
            "Manual, old reports and an empty bag of the pellets burned, if they are there.",
        ]);
        if (catalogue.PatternId == PatternIds.Hydronic) booking.Add("The heating's gauge and valves within reach; note the pressure before we come.");
        if (!situation.Concern) booking.Add("A service needs the stove cold; the fire is lit again at the end, half an hour on high.");
        return booking;
    }

    private static double MinutesOf(Catalogue catalogue, IReadOnlyDictionary<string, double> weights)
    {
        var service = catalogue.Action(ActionList.FullService)?.Minutes ?? 0;
        var repair = weights.Sum(w => catalogue.Fault(w.Key) is { Remedy.Kind: not RemedyKind.Clean } fault ? w.Value * fault.Remedy.Minutes : 0);
        return Math.Ceiling((Arriving + service + repair + Proving) / Quarter) * Quarter;
    }

    private static List<PartToBring> PartsOf(Catalogue catalogue, Tariff tariff, IReadOnlyDictionary<string, double> weights, IPredictive predictive)
    {
        var parts = new List<PartToBring>();
        foreach (var action in catalogue.Actions)
        {
            var faults = catalogue.Faults.Where(f => f.Remedy is { Kind: RemedyKind.Replace, PartCost: > 0 } && ActionList.CureOf(f.Id) == action.Id).ToList();
            if (faults.Count == 0) continue;
            var ids = faults.Select(f => f.Id).ToHashSet();
            var p = predictive.Explanations.Where(e => e.Faults.Any(ids.Contains)).Sum(e => e.Weight);
            if (p < LeastPart) continue;
            var likeliest = faults.MaxBy(f => weights.GetValueOrDefault(f.Id))!;
            parts.Add(new PartToBring(action.Id, action.Name, p, p * tariff.SecondTrip, likeliest.Remedy.OnVan));
        }

        return [.. parts.OrderByDescending(p => p.Worth).ThenBy(p => p.Action, StringComparer.Ordinal)];
    }

    private static List<ToolToBring> ToolsOf(Catalogue catalogue, IReadOnlyDictionary<string, double> weights)
    {
        var tools = new Dictionary<Tool, (double P, double Most, string For)>();
        foreach (var (id, weight) in weights)
        {
            if (catalogue.Fault(id) is not { } fault) continue;
            var proof = Confirmation.Of(fault, catalogue);
            var cure = catalogue.Check(ActionList.CureOf(id));
            foreach (var (tool, check) in new[] { proof, cure }.OfType<Check>().SelectMany(c => c.Tools.Select(t => (t, c))).DistinctBy(x => x.t))
            {
                var (p, most, name) = tools.GetValueOrDefault(tool, (0, 0, ""));
                tools[tool] = (Math.Min(1, p + weight), Math.Max(most, weight), weight > most ? check.Name : name);
            }
        }

        return [.. tools.Where(t => t.Value.P >= LeastTool).OrderByDescending(t => t.Value.P).ThenBy(t => t.Key).Select(t => new ToolToBring(t.Key, t.Value.P, t.Value.For))];
    }

    private static Dictionary<string, double> Marginals(IPredictive predictive)
    {
        var weights = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var e in predictive.Explanations)
        {
            foreach (var fault in e.Faults) weights[fault] = weights.GetValueOrDefault(fault) + e.Weight;
        }

        return weights;
    }
}
