using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Tests.Law.Readers;

namespace Chandlery.Tests.Law.Records;

/// <summary>Which place is meant by what was written.</summary>
public sealed class MeantPlaceTests
{
    private static readonly Lawbook Lawbook = InventedLaw.Read();

    [Theory]
    [InlineData("MA", "MA")]
    [InlineData("ma", "MA")]
    [InlineData("Mainland", "MA")]
    [InlineData(" the main ", "MA")]
    [InlineData("ISLAND", "IS")]
    [InlineData("XX", null)]
    public void A_place_is_meant_by_its_code_and_its_names(string written, string? code) =>
        Assert.Equal(code, Lawbook.FindPlace(written)?.Code.Text);

    [Fact]
    public void A_code_goes_before_a_name_that_is_the_same()
    {
        Place mainland = Lawbook.Places[0] with { AlsoCalled = ["IS"] };
        Assert.Equal("Island", (Lawbook with { Places = [mainland, Lawbook.Places[1]] }).FindPlace("IS")!.Name);
    }

    [Theory]
    [InlineData("MA", true)]
    [InlineData("Mainland", true)]
    [InlineData("Island", false)]
    public void A_place_knows_its_own_names(string name, bool isMeant) =>
        Assert.Equal(isMeant, Lawbook.Places[0].IsMeantBy(PlaceName.TryParse(name)!));

    [Theory]
    [InlineData("Maenland", "Did you mean 'Mainland'?")]
    [InlineData("The Maim", "Did you mean 'The Main'?")]
    [InlineData("MB", "Known places: MA (Mainland), IS (Island).")]
    [InlineData("MAA", "Did you mean 'MA'?")]
    [InlineData("somewhere else", "Known places: MA (Mainland), IS (Island).")]
    public void What_is_no_place_is_told_the_nearest(string written, string instead) =>
        Assert.Equal(instead, Lawbook.InsteadOfPlace(written));

    [Fact]
    public void An_edition_that_there_is_not_is_a_fault() =>
        Assert.Equal("There is no edition 'x'.", Assert.Throws<InvalidOperationException>(() => Lawbook.Edition("x")).Message);

    [Fact]
    public void A_law_on_product_safety_is_that_of_the_place()
    {
        Assert.NotNull(Lawbook.Safety.For(Lawbook.Safety.Duties, "MA"));
        Assert.Null(Lawbook.Safety.For(Lawbook.Safety.Duties, "IS"));
    }
}
