using Emberwright.Visits.Journal;

namespace Emberwright.Field.Home;

/// <summary>What a date is for, in words.</summary>
public static class DueWords
{
    /// <summary>The words.</summary>
    public static string Of(DueFor what) => what switch
    {
        DueFor.Service => T("DueWords.next-service"),
        DueFor.Return => T("DueWords.back-to-finish-the-job"),
        DueFor.FollowUp => T("DueWords.a-call-to-ask-how-it"),
    };
}
