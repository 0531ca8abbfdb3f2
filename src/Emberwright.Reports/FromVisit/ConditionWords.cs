using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.FromVisit;

/// <summary>States of the stove in words.</summary>
internal static class ConditionWords
{
    public static string Of(Condition condition) => Say.Term(ConditionText.Say(condition));
}
