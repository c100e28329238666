using System.Text.Json;
using Chandlery.Register;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Files;

/// <summary>The text that an entry's hash is made of. Registers that were signed before hold it, so that it stays to the letter.</summary>
public sealed class RegisterJsonTests
{
    // Names and order as the first program wrote them; the hashes are those of "declares: candle\n" and "label", by sha256sum.
    private static readonly string Written = """
        {"batch":"B-1","subject":"candle-1","candle":"Candle 1","edition":"eu-clp","asOf":"2026-11-25","lawLookedUp":"2026-11-01","result":"{}",
        "declarations":[{"path":"candles/candle.yaml","sha256":"5be231db0d9b356d25ce4b50a7e1583f43c9039a309af5b29402455bbde89099"}],
        "oils":[{"oil":"oil-1","name":"Night 1","document":"DOC-1","revised":"2026-02-02"},
        {"oil":"oil-4","name":"Night 4","document":"DOC-4","revised":"2026-02-05"}],
        "substances":[{"name":"Substance 1","cas":"","highPercent":1},{"name":"Substance 1","cas":"","highPercent":2}],
        "documents":[{"name":"label.pdf","sha256":"1aca80e8b55c802f7b43740da2990e1b5735bbb323d93eb5ebda8395b04025e2"}]}
        """.ReplaceLineEndings("");

    [Fact]
    public void What_is_signed_is_written_as_it_always_was() =>
        Assert.Equal(Written, JsonSerializer.Serialize(TestRegisters.Contents(1).Single(), RegisterJson.Default.RegisterContent));

    [Fact]
    public void What_was_signed_is_read_and_written_again_to_the_letter() =>
        Assert.Equal(
            Written,
            JsonSerializer.Serialize(
                JsonSerializer.Deserialize(Written, RegisterJson.Default.RegisterContent)!,
                RegisterJson.Default.RegisterContent
            )
        );
}
