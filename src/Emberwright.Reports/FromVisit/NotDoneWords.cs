using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>Reasons for work left undone, in words.</summary>
public static class NotDoneWords
{
    /// <summary>The words.</summary>
    public static string Of(NotDoneReason reason) => reason switch
    {
        NotDoneReason.NoAccess => "could not be reached safely",
        NotDoneReason.OwnerRefused => "the owner refused",
        NotDoneReason.OutOfService => "put out of service instead",
        NotDoneReason.NotFitted => "this stove has none",
    };
}
