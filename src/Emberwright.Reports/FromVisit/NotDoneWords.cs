using Emberwright.Reports.Wording;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>Reasons for work left undone, in words.</summary>
public static class NotDoneWords
{
    /// <summary>The words.</summary>
    public static string Of(NotDoneReason reason) => reason switch
    {
        NotDoneReason.NoAccess => Say.Of("not-done.could-not-be-reached-safely"),
        NotDoneReason.OwnerRefused => Say.Of("not-done.the-owner-refused"),
        NotDoneReason.OutOfService => Say.Of("not-done.put-out-of-service-instead"),
        NotDoneReason.NotFitted => Say.Of("not-done.this-stove-has-none"),
    };
}
