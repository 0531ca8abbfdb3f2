using Emberwright.Diagnosis.Signs;
using Emberwright.Stove.Faults;
using Emberwright.Trials.Generator;

namespace Emberwright.Trials.Visits;

/// <summary>Tells the complaint in words of their own, which the lexicon reads; one in five is so vague that nothing comes of it.</summary>
internal static class Customer
{
    private const double Vague = 0.2;

    /// <summary>What the call says in the catalogue's terms: perhaps nothing, perhaps more than was meant.</summary>
    public static IEnumerable<(string Sign, string Outcome)> Says(HiddenStove stove, string complaint)
    {
        var chance = stove.Always("words");
        var outcome = stove.Catalogue.Sign(Complaints.Sign)!.Outcomes.First(o => o.Id == complaint);
        string[] phrases = [.. outcome.Alone ?? []];
        if (phrases.Length > 0 && !chance.Happens(Vague))
        {
            var found = Lexicon.Read($"Hello, {phrases[(int)(chance.Unit() * phrases.Length)]}.", stove.Case.Pattern.Id).Found;
            if (found.Any(f => f.Sign == Complaints.Sign)) return found.Select(f => (f.Sign, f.Outcome));
        }

        // "It does not do what it should": asked again, they say which of the usual complaints it is, and one in seven says another.
        var outcomes = stove.Catalogue.Sign(Complaints.Sign)!.Outcomes;
        return [(Complaints.Sign, chance.Happens(0.85) ? complaint : outcomes[chance.Pick([.. outcomes.Select(o => o.Usual)])].Id)];
    }
}
