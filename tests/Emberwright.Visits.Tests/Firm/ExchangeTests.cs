using CsCheck;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Emberwright.Visits.Tests.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Firm;

public class ExchangeTests
{
    private static readonly FirmBook Empty = FirmBook.Fold(FirmFile.Begin("f"));

    [Fact]
    public void A_table_of_any_texts_reads_back() =>
        Gen.Select(Gen.Char[" a,;\"\n\t\u00e9|'=-"].Array[0, 8].Select(c => new string(c).Trim()).Array[3].Array[1, 5], Gen.Int[0, 0]).Sample((rows, _) =>
        {
            var told = rows.Where(r => r.Any(c => c.Length > 0)).ToArray();
            var back = CsvTable.Read(CsvTable.Write(["one", "two", "three"], told)).Rows.Select(r => r.Select(c => c.Text.ReplaceLineEndings("\n")).ToArray()).ToArray();
            return back.Length == told.Length && back.Zip(told).All(p => p.First.SequenceEqual(p.Second));
        });

    [Fact]
    public void Cells_know_the_line_their_row_begins_on_even_after_a_text_of_two_lines()
    {
        var table = CsvTable.Read("name,address\r\n\"A\",\"1 Weir Street\r\nOrrin\"\r\nB,2 Weir Street\r\n");
        Assert.Equal([2, 4], table.Rows.Select(r => r[0].Line));
        Assert.Equal("1 Weir Street\r\nOrrin", table.Rows[0][1].Text);
    }

    [Theory]
    [InlineData("name;address\nA;1,5 Weir Street\n")]
    [InlineData("\uFEFFCustomer\tStreet\nA\t1,5 Weir Street\n")]
    public void Semicolons_and_tabs_separate_as_well(string text)
    {
        var preview = CsvImport.Read(text, TableKind.Customers, Empty);
        var customer = Assert.IsType<Customer>(Assert.Single(preview.Entries));
        Assert.Equal(("A", "1,5 Weir Street"), (customer.Name, customer.Address));
    }

    [Fact]
    public void Every_wrong_cell_is_told_with_line_and_column_and_nothing_may_be_taken_in()
    {
        var preview = CsvImport.Read("number,name,price,keep\nA1,igniter,12.50,2\nA2,disc,cheap,2\nA3,rope,3,-1\n,,4,\n", TableKind.Parts, Empty);
        Assert.False(preview.IsSound);
        Assert.Equal([(3, 3, "cheap"), (4, 4, "-1"), (5, 0, "")], preview.Problems.Select(p => (p.Line, p.Column, p.Value)));
        Assert.All(preview.Problems, p => Assert.NotEmpty(p.Remedy));
    }

    [Fact]
    public void A_pattern_nobody_knows_and_a_customer_nobody_has_are_refused()
    {
        var preview = CsvImport.Read("maker,serial,construction,customer\nFennick & Oar,1,steam engine,\nFennick & Oar,2,corn stove,c9\n", TableKind.Stoves, Empty);
        Assert.Equal([(2, 3), (3, 4)], preview.Problems.Select(p => (p.Line, p.Column)));
    }

    [Fact]
    public void Taking_the_same_table_in_twice_says_nothing_new()
    {
        const string Text = "name,address,phone\nOttilie Brandreth,14 Millrace Lane,555-0114\nBarnaby Thistlewood,3 Ferry Steps,\n";
        var first = CsvImport.Read(Text, TableKind.Customers, Empty);
        Assert.Equal((2, 0, 0), (first.New, first.Changed, first.Same));
        var book = FirmBook.Fold(SomeRecords.Book([.. first.Entries]));
        var again = CsvImport.Read(Text.Replace("555-0114", "555-0199"), TableKind.Customers, book);
        Assert.Equal((0, 1, 1), (again.New, again.Changed, again.Same));
    }

    [Theory]
    [InlineData(TableKind.Customers)]
    [InlineData(TableKind.Stoves)]
    [InlineData(TableKind.Parts)]
    public void What_is_written_out_says_nothing_new_when_read_in(TableKind kind)
    {
        var bytes = TextBlob.Bytes("14 Millrace Lane", new byte[16]);
        string? Words(string reference) => reference == Blob.ReferenceTo(bytes) ? TextBlob.Words(bytes) : null;
        var book = FirmBook.Fold(SomeRecords.Book(
            new Customer("c1", "Ottilie, \"Tilly\"", Blob.ReferenceTo(bytes), "555", FuelPerYear: SomeRecords.Q("1.1 t")),
            new StoveRecord("s1", "c1", "underfed", "Fennick & Oar", "Mole 2", "7"), new Part("n1", "igniter", "n1", Equivalents: ["a b", "c"], Price: 14.5, Keep: 2)));
        var preview = CsvImport.Read(CsvExport.Write(kind, book, Words), kind, book, Words);
        Assert.Empty(preview.Problems);
        Assert.Empty(preview.Entries);
        Assert.Equal(1, preview.Same);
    }

    [Fact]
    public void An_archive_gives_everything_back_byte_for_byte()
    {
        var book = FirmFile.Write(SomeRecords.Book(new Person("p1", "R. Sorrel")));
        var visit = SomeEntries.Device(1, SomeEntries.Start, 1).Append(VisitJournal.Begin("visit-1"), new NoteBody("−3 °C, “cold”"));
        var archive = new Archive(book, new Dictionary<string, string> { ["visit-1"] = VisitFile.Write(visit) }, new Dictionary<string, byte[]> { [new string('a', 64)] = [0, 1, 255] });
        var zip = archive.Write(SomeEntries.Start);
        var (back, problems) = Archive.Read(zip);
        Assert.Empty(problems);
        Assert.Equal((archive.Book, archive.Visits["visit-1"]), (back.Book, back.Visits["visit-1"]));
        Assert.Equal(archive.Blobs[new string('a', 64)], back.Blobs[new string('a', 64)]);
        Assert.Equal(zip, back.Write(SomeEntries.Start));
    }

    [Fact]
    public void A_damaged_file_of_an_archive_is_told_and_the_others_are_read()
    {
        var visits = new[] { "visit-1", "visit-2" }.ToDictionary(id => id, id => VisitFile.Write(VisitJournal.Begin(id)));
        var files = Pack.Unzip(new Archive(null, visits, new Dictionary<string, byte[]>()).Write(SomeEntries.Start));
        var (back, problems) = Archive.Read(Pack.Zip(files.Select(f => f.Name == "visits/visit-1.jsonl" ? f with { Bytes = [.. f.Bytes, 0] } : f)));
        Assert.Contains("visit-1", Assert.Single(problems), StringComparison.Ordinal);
        Assert.Equal("visit-2", Assert.Single(back.Visits).Key);
    }

    [Fact]
    public void What_is_no_archive_is_refused_in_words()
    {
        Assert.Contains("archive.json", Assert.Throws<InvalidDataException>(() => Archive.Read([1, 2, 3])).Message, StringComparison.Ordinal);
        Assert.Contains("archive.json", Assert.Throws<InvalidDataException>(() => Archive.Read(Pack.Zip([new("a.txt", [1])]))).Message, StringComparison.Ordinal);
    }
}
