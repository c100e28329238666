using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law.Records;

/// <summary>Names and numbers that belong to different substances, in an invented list where each line has one reason to be one with another.</summary>
public sealed class NumberCheckTests
{
    private const string Amber = "50-00-0";
    private const string AmberEc = "200-001-8";
    private const string Ash = "71-43-2"; // in one entry with amber
    private const string AshEc = "200-753-7";
    private const string Birch = "64-17-5";
    private const string BirchEc = "200-578-6";
    private const string Beech = "67-64-1"; // in one draft with birch
    private const string Cedar = "67-56-1"; // its EC number is not known
    private const string Dill = "56-81-5";
    private const string Elm = "108-95-2"; // in one row of an extract with dill
    private const string Fir = "80-56-8";
    private const string Fig = "127-91-3"; // in one row with fir, which are two substances
    private const string Hop = "106-24-1";
    private const string Iris = "120-57-0"; // in one row with hop, whose name is that of the row
    private const string NobodysEc = "200-662-2";

    private static readonly NumberCheck Check = new(
        new SubstanceList(
            null,
            [
                new EntryHistory(
                    "1",
                    [
                        TestLaw.Listed(Amber) with
                        {
                            Members = [new EntryMember(["resin"], Amber, null), new EntryMember(["ash"], Ash, AshEc)],
                        },
                    ]
                ),
            ],
            new Lazy<IReadOnlyList<KnownSubstance>>([
                Known(Amber, AmberEc, "amber"),
                Known(Birch, BirchEc, "birch"),
                Known(Beech, null, "ash"),
                Known(Cedar, null, "cedar"),
                Known(Dill, "200-289-5", "dill", "Herb row"),
                Known(Elm, "203-632-7", "elm", "Herb row"),
                Known(Fir, null, "fir", "Fir and fig"),
                Known(Fig, null, "fig", "Fir and fig"),
                Known(Hop, null, "hop", "Hop"),
                Known(Iris, null, "iris", "Hop"),
            ]),
            [new ExpectedClasses("birch and beech", [Birch, Beech], [], "", "", "")],
            ["herb row"]
        )
    );

    private static KnownSubstance Known(string cas, string? ec, string name, string? row = null) => new(cas, ec, [name], null, row);

    private static SubstanceIdentity Line(string name, string? cas, string? ec) =>
        new(name, cas is null ? null : CasNumber.Parse(cas).Value, ec is null ? null : EcNumber.Parse(ec).Value);

    [Theory]
    [InlineData("amber", Amber, null)]
    [InlineData("AMBER", Birch, Amber)]
    [InlineData("birch", Amber, Birch)]
    [InlineData("amber", Ash, null)]
    [InlineData("birch", Beech, null)]
    [InlineData("dill", Elm, null)]
    [InlineData("fir", Fig, Fir)]
    [InlineData("hop", Iris, null)]
    [InlineData("iris", Hop, null)]
    [InlineData("cedar", Hop, Cedar)]
    [InlineData("ash", Ash, null)]
    [InlineData("ash", Amber, Beech)]
    [InlineData("nothing", Amber, null)]
    [InlineData("amber", null, null)]
    public void A_name_with_a_number_of_another_is_told_its_own(string name, string? cas, string? own) =>
        Assert.Equal(own is null ? [] : [own], Check.CasOfName(Line(name, cas, null)));

    [Theory]
    [InlineData("amber", null, AmberEc, null)]
    [InlineData("amber", null, BirchEc, AmberEc)]
    [InlineData("amber", null, AshEc, null)]
    [InlineData("amber", null, NobodysEc, AmberEc)]
    [InlineData("cedar", null, BirchEc, null)]
    [InlineData("nothing", null, BirchEc, null)]
    [InlineData("amber", Birch, BirchEc, null)]
    [InlineData("amber", null, null, null)]
    public void A_name_with_the_EC_number_of_another_is_told_its_own(string name, string? cas, string? ec, string? own) =>
        Assert.Equal(own is null ? [] : [own], Check.EcOfName(Line(name, cas, ec)));

    [Theory]
    [InlineData(Amber, AmberEc, null)]
    [InlineData(Amber, BirchEc, Birch)]
    [InlineData(Birch, AmberEc, Amber)]
    [InlineData(Birch, AshEc, Ash)]
    [InlineData(Ash, AmberEc, null)]
    [InlineData(Amber, AshEc, null)]
    [InlineData(Cedar, BirchEc, null)]
    [InlineData(Amber, NobodysEc, null)]
    [InlineData(Amber, null, null)]
    [InlineData(null, AmberEc, null)]
    public void An_EC_number_of_another_is_told_whose_it_is(string? cas, string? ec, string? owner) =>
        Assert.Equal(owner is null ? [] : [owner], Check.CasOfEc(Line("", cas, ec)));
}
