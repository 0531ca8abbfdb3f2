using System.Globalization;
using System.Text;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// Letters and short messages to households, as plain text to be read before it is sent. They say the day, why, how long
/// it takes and what to do before; they never promise a price.
/// </summary>
public static class Letters
{
    /// <summary>What a due item is written about at a time of the year.</summary>
    public static ContactAbout AboutOf(DueItem item, bool springOffer)
    {
        ArgumentNullException.ThrowIfNull(item);
        return item.For == DueFor.FollowUp ? ContactAbout.HowItRuns : springOffer ? ContactAbout.SpringOffer : ContactAbout.Due;
    }

    /// <summary>A letter.</summary>
    /// <param name="item">What is due.</param>
    /// <param name="about">What it is about.</param>
    /// <param name="firm">The firm.</param>
    /// <param name="today">The date of the letter.</param>
    public static string Letter(DueItem item, ContactAbout about, FirmDetails firm, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(firm);
        var text = new StringBuilder();
        foreach (var line in new[] { firm.Name, firm.Address, firm.Phone }.Where(l => !string.IsNullOrEmpty(l))) text.Append(line).Append('\n');
        text.Append('\n').Append(item.Last.Customer ?? "To the household").Append('\n');
        if (item.Last.Address is { } address) text.Append(address).Append('\n');
        text.Append('\n').Append(Day(today)).Append("\n\n");
        if (!string.IsNullOrEmpty(firm.Opening)) text.Append(firm.Opening).Append("\n\n");
        text.Append(Wrap(Body(item, about, firm))).Append("\n\n").Append(firm.Name ?? "").Append('\n');
        return text.ToString();
    }

    /// <summary>A message of a few lines.</summary>
    /// <inheritdoc cref="Letter"/>
    public static string Message(DueItem item, ContactAbout about, FirmDetails firm)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(firm);
        var stove = Stove(item);
        return (about switch
        {
            ContactAbout.Due => $"{firm.Name}: your {stove} is due for its service about {Day(item.Soonest)}. About {Hours(item.Minutes)}. Which day suits you?{Call(firm)}",
            ContactAbout.SpringOffer => $"{firm.Name}: your {stove} will be due about {Day(item.On)}. In spring there is time and it can then stand clean over the summer. Shall we come?{Call(firm)}",
            ContactAbout.HowItRuns => $"{firm.Name}: we were at your {stove} on {Day(item.Last.Day!.Value)}. How has it run since? If a CO alarm sounds or you smell smoke, switch it off at its own switch, go out and call.{Call(firm)}",
        }).Trim();
    }

    private static string Body(DueItem item, ContactAbout about, FirmDetails firm) => about switch
    {
        ContactAbout.Due =>
            $"Your {Stove(item)} is due for its service about {Day(item.Soonest)}{(Why(item) is { } why ? $": {why}" : "")}. The work takes about {Hours(item.Minutes)}."
            + $"\n\nSwitch the stove off at its own switch three hours before we come and leave it plugged in, so that it burns out and cools. Clear a metre in front of it.\n\nTell us which day suits you.{Call(firm)}",
        ContactAbout.SpringOffer =>
            $"Your {Stove(item)} will be due about {Day(item.On)}. We write now because in spring there is time, parts that are wanted can be ordered at leisure, and ash that lies in a stove over a damp summer eats into the steel. The work takes about {Hours(item.Minutes)}."
            + $"\n\nTell us if you would like us to come in the next weeks.{Call(firm)}",
        ContactAbout.HowItRuns =>
            $"On {Day(item.Last.Day!.Value)} we worked on your {Stove(item)}. How has it run since? Does it light at once, is the glass as it was, has it stopped by itself?"
            + $"\n\nIf a CO alarm sounds, or you smell smoke, switch the stove off at its own switch, do not pull the plug, go out and call.{Call(firm)}",
    };

    private static string? Why(DueItem item) => item.IsSoonerThanAgreed
        ? $"sooner than the day we agreed, {Day(item.Agreed!.Value)}, since by what you burn it will have fouled earlier"
        : item.Agreed is not null ? "the day we agreed at the last visit" : item.Forecast is { } f ? $"by then the {f.Area.ToLowerInvariant()} may well need it" : null;

    private static string Stove(DueItem item) =>
        string.Join(' ', new[] { item.Last.Maker, item.Last.Model }.Where(w => !string.IsNullOrEmpty(w))) is { Length: > 0 } name ? $"{name} pellet stove" : "pellet stove";

    private static string Call(FirmDetails firm) => string.IsNullOrEmpty(firm.Phone) ? "" : $" Telephone {firm.Phone}.";

    private static string Hours(double minutes) => minutes < 90 ? $"{minutes:0} minutes" : $"{Math.Round(minutes / 30) / 2:0.#} hours";

    private static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    private static string Wrap(string text)
    {
        const int Width = 72;
        var made = new StringBuilder();
        foreach (var paragraph in text.Split('\n'))
        {
            var column = 0;
            foreach (var word in paragraph.Split(' '))
            {
                if (column > 0 && column + 1 + word.Length > Width)
                {
                    made.Append('\n');
                    column = 0;
                }
                else if (column > 0)
                {
                    made.Append(' ');
                    column++;
                }

                made.Append(word);
                column += word.Length;
            }

            made.Append('\n');
        }

        return made.ToString().TrimEnd('\n');
    }
}
