using Emberwright.Field.Words;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Home;

/// <summary>Finds visits by any words that stand in them: name, street, maker, label, complaint.</summary>
public static class Search
{
    /// <summary>The visits in which every word wanted occurs, newest first.</summary>
    public static IReadOnlyList<Visit> In(IEnumerable<Visit> visits, string wanted)
    {
        return
        [
            .. visits
                .Where(visit => Synonyms.Match(TextOf(visit), wanted))
                .OrderByDescending(visit => visit.Day),
        ];
    }

    private static string TextOf(Visit visit) => string.Join('\n',
    [
        visit.Customer?.Name, visit.Customer?.Address, visit.Customer?.Phone, visit.Appliance?.Maker, visit.Appliance?.Model,
        visit.Appliance?.Name, visit.Appliance?.Serial, visit.Appliance?.Label, .. visit.Of<ComplaintBody>().Select(fact => fact.Body.Words),
    ]);
}
