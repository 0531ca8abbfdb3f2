// Makes a year of an invented one-person firm through the engine itself: what its gauge reads comes from the virtual stove,
// what its seals hold from diagnosis.
//   dotnet run --project demo/firm -c Release -- year.zip [stoves] [visits] [seed]
using Emberwright.DemoFirm;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

var file = args.Length > 0 ? args[0] : "year.zip";
var stoves = args.Length > 1 ? int.Parse(args[1]) : 300;
var visits = args.Length > 2 ? int.Parse(args[2]) : 400;
var chance = new Chance(args.Length > 3 ? int.Parse(args[3]) : 1847);
var last = new DateOnly(2026, 11, 20);
var begun = new DateTimeOffset(2025, 11, 20, 8, 0, 0, TimeSpan.FromHours(-5));

Household[] houses = [.. Enumerable.Range(0, stoves).Select(n => Household.Any(chance, n))];
var states = new Dictionary<int, StoveState>();
var texts = new Dictionary<string, string>();
foreach (var appointment in Year.Of(chance, stoves, visits, last))
{
    var house = houses[appointment.Household];
    if (!states.TryGetValue(appointment.Household, out var state))
        states[appointment.Household] = state = new(house, appointment.Day.AddDays(-chance.Whole(290, 430)), chance);
    state.BurnUntil(appointment.Day);
    var journal = new VisitWriter(chance, house, state, appointment).Write();
    texts[journal.Header.Visit] = VisitFile.Write(journal);
    if (texts.Count % 20 == 0) Console.Error.WriteLine($"{texts.Count} of {visits} visits");
}

var book = PartList.Book(chance, begun, houses);
File.WriteAllBytes(file, new Archive(FirmFile.Write(book), texts, new Dictionary<string, byte[]>()).Write(begun.AddYears(1)));
Console.Error.WriteLine($"{file}: {texts.Count} visits to {states.Count} stoves, {new FileInfo(file).Length / 1000} kB");
