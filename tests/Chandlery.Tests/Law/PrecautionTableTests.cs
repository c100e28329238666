using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>What each precautionary statement is offered for, against the law's own tables.</summary>
public sealed class PrecautionTableTests
{
    // CLP Annex IV, Part 1, and the label tables of Annex I (for EUH380 to EUH451: Tables 3.11.3, 4.2.3, 4.3.1 and 4.4.1; for H420:
    // Table 5.2), consolidated text of 1 May 2026, written down from the tables and not from the program's rows. Statements that the
    // tables give as parts of a combination stand under the combination. Not here: aerosols (H222, H223, H229),
    // which are no kind of product here, and P101 to P103, for which the law names no class.
    private const string Table = """
        P201: H340 H341 H350 H351 H360 H361 H362 EUH380 EUH381 EUH430 EUH431 EUH440 EUH441 EUH450 EUH451
        P202: H340 H341 H350 H351 H360 H361 EUH380 EUH381 EUH430 EUH431 EUH440 EUH441 EUH450 EUH451
        P210: H224 H225 H226
        P233: H224 H225 H226
        P240: H224 H225 H226
        P241: H224 H225 H226
        P242: H224 H225 H226
        P243: H224 H225 H226
        P260: H314 H330 H362 H370 H371 H372 H373
        P261: H317 H331 H332 H334 H335 H336
        P262: H310
        P263: H362 EUH380 EUH381
        P264: H300 H301 H302 H310 H314 H315 H319 H362 H370 H371 H372
        P270: H300 H301 H302 H310 H362 H370 H371 H372
        P271: H330 H331 H332 H335 H336
        P272: H317
        P273: H400 H410 H411 H412 H413 EUH430 EUH431 EUH440 EUH441 EUH450 EUH451
        P280: H224 H225 H226 H310 H311 H312 H314 H315 H317 H318 H319 H340 H341 H350 H351 H360 H361 EUH380 EUH381
        P284: H330 H334
        P301+P310: H300 H301 H304
        P301+P312: H302
        P301+P330+P331: H314
        P302+P352: H310 H311 H312 H315 H317
        P303+P361+P353: H224 H225 H226 H314
        P304+P340: H314 H330 H331 H332 H334 H335 H336
        P305+P351+P338: H314 H318 H319
        P308+P311: H370 H371
        P308+P313: H340 H341 H350 H351 H360 H361 H362 EUH380 EUH381
        P310: H310 H314 H318 H330
        P311: H331
        P312: H311 H312 H332 H335 H336
        P314: H372 H373
        P320: H330
        P321: H300 H301 H310 H311 H312 H314 H315 H317 H331 H370
        P330: H300 H301 H302
        P331: H304
        P332+P313: H315
        P333+P313: H317
        P337+P313: H319
        P342+P311: H334
        P361+P364: H310 H311
        P362+P364: H312 H315 H317
        P363: H314
        P370+P378: H224 H225 H226
        P391: H400 H410 H411 EUH430 EUH431 EUH440 EUH441 EUH450 EUH451
        P403+P235: H224 H225 H226
        P403+P233: H330 H331 H335 H336
        P405: H300 H301 H304 H310 H311 H314 H330 H331 H335 H336 H340 H341 H350 H351 H360 H361 H370 H371 EUH380 EUH381 EUH430 EUH431
        P501: H224 H225 H226 H300 H301 H302 H304 H310 H311 H312 H314 H317 H330 H331 H334 H335 H336 H340 H341 H350 H351 H360 H361 H370 H371 H372 H373 H400 H410 H411 H412 H413 EUH380 EUH381 EUH430 EUH431 EUH440 EUH441 EUH450 EUH451
        P502: H420
        """;

    private static readonly string[] ForConsumersAsSuch = ["P101", "P102", "P103"];

    public static TheoryData<string, string> Rows()
    {
        var data = new TheoryData<string, string>();
        foreach (string line in Table.Split('\n'))
        {
            string[] parts = line.Split(": ");
            data.Add(parts[0], parts[1]);
        }

        return data;
    }

    [Outside("CLP Annex IV, Part 1, and label tables of Annex I, consolidated text of 1 May 2026")]
    [Theory]
    [MemberData(nameof(Rows))]
    public void A_precaution_is_offered_for_what_the_law_lists(string code, string listed)
    {
        IEnumerable<string> ours = TestLaw
            .Eu.Precautions.Offers.Where(o => o.Code.Text == code && o.Listed)
            .SelectMany(o => o.For)
            .Select(s => s.Text);
        Assert.Equal(listed.Split(' ').Order(), ours.Order());
    }

    [Fact]
    public void No_precaution_is_offered_that_the_tables_lack()
    {
        string[] listed = [.. Table.Split('\n').Select(line => line.Split(": ")[0]), .. ForConsumersAsSuch];
        Assert.Empty(TestLaw.Eu.Precautions.Offers.Select(o => o.Code.Text).Except(listed));
    }

    [Fact]
    public void What_covers_another_is_chosen_before_it()
    {
        IReadOnlyList<PrecautionOffer> offers = TestLaw.Eu.Precautions.Offers;
        PrecautionOffer[] covered = [.. offers.Where(o => o.CoveredBy is not null)];
        Assert.NotEmpty(covered);
        Assert.All(covered, o => Assert.All(offers.Where(c => c.Code == o.CoveredBy && c.Use == o.Use), c => Assert.True(c.Rank < o.Rank)));
    }
}
