using Chandlery.Core.Assessed;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>Who must stand behind a candle is asked by place of sale and day.</summary>
public sealed class RoleTests
{
    private const string Person =
        "responsiblePersons: [{ name: Quay Agents, address: [1 Dock Road, Dublin], country: IE, email: rp@quay.example }]";

    private const string Importer =
        "importers: [{ name: Quay Imports, address: [2 Dock Road, Dublin], country: IE, email: in@quay.example }]";

    private static readonly DateOnly BeforeSupplierRule = new(2026, 6, 30);

    private static MakersFolder Maker(string country, params string[] more)
    {
        var folder = new MakersFolder();
        string maker = folder.Read("maker.yaml");
        folder.Write("maker.yaml", maker[..maker.IndexOf("importers:", StringComparison.Ordinal)]);
        return folder.Change("maker.yaml", "country: IE\n", $"country: {country}\n{string.Join('\n', more)}\n");
    }

    private static List<string> Stops(Assessment a) => [.. a.Findings.Where(f => f.Gravity == Gravity.Stop).Select(f => f.Clause.Text)];

    [Fact]
    [Outside("Regulation (EU) 2023/988, Art. 16: a responsible person in the Union for products of makers outside")]
    public void A_maker_outside_needs_a_responsible_person_in_the_Union()
    {
        using MakersFolder without = Maker("GB");
        Assert.Contains(
            Stops(without.Assess("slate-jar", "IE", BeforeSupplierRule)),
            c => c.EndsWith("2023/988, Art. 16", StringComparison.Ordinal)
        );
        using MakersFolder with = Maker("GB", Person);
        Assert.Empty(Stops(with.Assess("slate-jar", "IE", BeforeSupplierRule)));
        using MakersFolder inside = Maker("DE");
        Assert.Empty(Stops(inside.Assess("slate-jar", "IE")));
    }

    [Fact]
    [Outside("CLP Art. 4(11), consolidated text of 1 May 2026; Regulation (EU) 2025/2439, Art. 1: since 1 July 2026")]
    public void Since_July_2026_a_supplier_in_the_Union_is_asked_for()
    {
        using MakersFolder folder = Maker("GB", Person);
        Assert.Empty(Stops(folder.Assess("slate-jar", "IE", BeforeSupplierRule)));
        Assert.Equal(["CLP Art. 4(11)"], Stops(folder.Assess("slate-jar", "IE", BeforeSupplierRule.AddDays(1))));
        using MakersFolder both = Maker("GB", Person, Importer);
        Assert.Empty(Stops(both.Assess("slate-jar", "IE")));
    }

    [Fact]
    public void A_person_in_Northern_Ireland_serves_there_and_not_in_the_Union()
    {
        string person = Person.Replace("country: IE", "country: NI", StringComparison.Ordinal);
        string importer = Importer.Replace("country: IE", "country: NI", StringComparison.Ordinal);
        using MakersFolder folder = Maker("GB", person, importer);
        Assert.Empty(Stops(folder.Assess("slate-jar", "NI")));
        Assert.Equal(2, Stops(folder.Assess("slate-jar", "IE")).Count);
    }

    [Fact]
    public void Who_must_be_named_stands_on_label_and_papers()
    {
        using MakersFolder folder = Maker("GB", Person, Importer);
        Assessment a = folder.Assess("slate-jar", "IE");
        Assert.Contains("IE: Quay Agents, 1 Dock Road, Dublin, rp@quay.example", a.Maker.AddressLines);
        Assert.Contains("IE: Quay Imports, 2 Dock Road, Dublin, in@quay.example", a.Maker.AddressLines);
        Assert.DoesNotContain(folder.Assess("slate-jar", "US").Maker.AddressLines, l => l.Contains("Quay", StringComparison.Ordinal));
    }

    [Fact]
    public void Under_whose_name_it_is_sold_is_its_maker()
    {
        using MakersFolder folder = Maker(
            "IE",
            "madeFor: { name: House of Tarn, address: [9 High Street, Port Aldrin], country: DE, telephone: '+999 1', email: h@tarn.example }"
        );
        Assessment a = folder.Assess("slate-jar", "IE");
        Assert.Equal(("House of Tarn", "+999 1", "h@tarn.example"), (a.Maker.Name, a.Maker.Telephone, a.Maker.Email));
        Assert.Equal("DE", a.Roles.MakerCountry);
    }

    [Fact]
    public void A_country_that_is_not_declared_is_shown_and_not_taken_for_harmless()
    {
        using var folder = new MakersFolder();
        folder.Change("maker.yaml", "country: IE\nvat", "vat");
        Assessment a = folder.Assess("slate-jar", "IE");
        Assert.False(a.StopsSale);
        Assert.Contains(a.Findings, f => f.What.Contains("country is not declared", StringComparison.Ordinal));
    }
}
