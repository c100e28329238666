using Chandlery.Core.Declared;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Declared;

public class RegistryNumberTests
{
    // CAS, "Check Digit Verification of CAS Registry Numbers": worked example 107-07-3; the others are widely published.
    [Outside("CAS, Check Digit Verification of CAS Registry Numbers, worked example 107-07-3")]
    [Theory]
    [InlineData("107-07-3")]
    [InlineData("7732-18-5")]
    [InlineData("58-08-2")]
    [InlineData("5989-27-5")]
    [InlineData("8028-48-6")]
    public void AcceptsTrueCasNumbers(string number) => Assert.True(CasNumber.Parse(number).Success);

    [Outside("CAS, Check Digit Verification of CAS Registry Numbers")]
    [Theory]
    [InlineData("107-07-4", "call for 3")]
    [InlineData("7732-18-6", "call for 5")]
    [InlineData("78-70-5", "call for 6")]
    public void RefusesAWrongCasCheckDigit(string number, string expected)
    {
        Assert.Contains(expected, CasNumber.Parse(number).Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("78-7-06")]
    [InlineData("07732-18-5")]
    [InlineData("78706")]
    [InlineData("78-70-6 ; 1")]
    public void RefusesWhatHasNoCasForm(string number) => Assert.False(CasNumber.Parse(number).Success);

    // EC Inventory: formaldehyde 200-001-8, water 231-791-2, d-limonene 227-813-5.
    [Outside("EC Inventory numbers of formaldehyde, water and d-limonene")]
    [Theory]
    [InlineData("200-001-8")]
    [InlineData("231-791-2")]
    [InlineData("227-813-5")]
    public void AcceptsTrueEcNumbers(string number) => Assert.True(EcNumber.Parse(number).Success);

    [Outside("EC Inventory: check digit of formaldehyde's number")]
    [Theory]
    [InlineData("200-001-7")]
    [InlineData("231-791-3")]
    public void RefusesAWrongEcCheckDigit(string number) => Assert.False(EcNumber.Parse(number).Success);
}
