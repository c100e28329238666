using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

public class UfiTests
{
    [Outside("ECHA, UFI Developers Manual, version 1.4, November 2021: published vectors")]
    [Theory]
    [InlineData("AT", "U12345678", 178956970, "C23S-PQ2V-AMH9-VVRF")]
    [InlineData("BG", "987654321", 89478485, "A1JV-EUD3-498W-U23R")]
    [InlineData("CY", "12345678C", 87654321, "7EHW-3KC7-748V-S1RH")]
    [InlineData("CZ", "81726354", 156920229, "HKC1-Q7N0-DKF6-7N3E")]
    [InlineData("CZ", "9785634210", 268435455, "W3NN-SKC4-JXSS-V4WG")]
    [InlineData("DK", "31415926", 524544, "3FQU-5GP0-Y105-J64N")]
    [InlineData("ES", "A1234567X", 178956970, "T23S-6QD4-3MHA-VT69")]
    [InlineData("FR", "ZY999999999", 230087533, "NX3Q-2263-2DP5-UQ4T")]
    [InlineData("FR", "10012345678", 268435455, "23NN-5KKE-GXSF-7MD3")]
    [InlineData("GB", "999987654321", 156920229, "CJC1-47ES-AKFS-WTFW")]
    [InlineData("GB", "ZY123", 268435455, "53NN-7KTT-1XS1-DDPH")]
    [InlineData("EL", "567438921", 66260700, "QNWM-9X6E-E46N-G4GJ")]
    [InlineData("HR", "16021765654", 268435455, "53NN-KKPX-SXSD-QJY7")]
    [InlineData("IE", "9Z54321Y", 134217728, "GMTT-2SQN-6FDD-6TV1")]
    [InlineData("IE", "9*54321Y", 134217728, "GMTT-2SQR-UFD0-6TFR")]
    [InlineData("IE", "9876543ZW", 230087533, "XY3Q-S215-2DPF-DA4U")]
    [InlineData("IS", "AB3D5F", 182319099, "XUG4-WE32-RXHD-RHWU")]
    [InlineData("IT", "14286244833", 214783315, "WK3F-PYSX-TXM0-K9AV")]
    [InlineData("LT", "987654321", 15790899, "W3VQ-HGW8-UF12-W7QP")]
    [InlineData("LU", "16726218", 214783315, "FK3F-8YC6-1XMK-SAQ5")]
    [InlineData("MT", "99887766", 83144621, "7KW0-SMM5-2Q7N-4K8D")]
    [InlineData("NO", "958473621", 268435455, "63NN-7KPT-WXS8-WGYA")]
    [InlineData("PT", "998776554", 30051977, "K9WS-JKK3-WS2E-1WSC")]
    [InlineData("RO", "9081726354", 214783315, "2K3F-QYHK-YXMU-RTN5")]
    [InlineData("SI", "12345678", 178956970, "U23S-WQK5-AMH7-V03N")]
    [InlineData("KEY", "1828639338661", 156920229, "NJC1-671A-UKF3-J0M8")]
    public void PublishedVectors(string country, string vat, long formulation, string expected)
    {
        Assert.Equal(expected, Ufi.Make(country, vat, formulation, out string why));
        Assert.Empty(why);
        UfiContent? content = Ufi.Read(expected, out why);
        Assert.True(content is not null, why);
        Assert.Equal(country, content.Country);
        Assert.Equal(formulation, content.FormulationNumber);
    }

    // Derived during research with a procedure that reproduced all 51 published vectors; not official.
    [Theory]
    [InlineData("DE", "123456789", 0, "6000-50S1-M00K-U8F3")]
    [InlineData("FR", "AB123456789", 1, "D200-H0H7-U000-U7J9")]
    [InlineData("IT", "12345678901", 12345, "2V53-7149-Y000-RR46")]
    [InlineData("AT", "U99999999", 268435455, "K3NN-AK4A-8XSE-WSSE")]
    [InlineData("PL", "1234567890", 7, "HM00-G061-D00D-F96H")]
    [InlineData("ES", "X1234567X", 42, "HM30-50VX-R00W-M4UE")]
    [InlineData("NL", "123456789B01", 1000, "3VR2-R0H1-S00Y-5RQS")]
    [InlineData("IE", "1234567T", 5, "9F00-D0UT-N006-4JEJ")]
    [InlineData("CY", "10259033P", 77, "0M60-108K-K00H-SKJG")]
    public void DerivedVectors(string country, string vat, long formulation, string expected) =>
        Assert.Equal(expected, Ufi.Make(country, vat, formulation, out _));

    [Outside("ECHA, UFI guidance: the widely published example R3NN-3KVT-2XSG-W43J")]
    [Fact]
    public void TheWidelyPublishedExampleDecodes()
    {
        UfiContent content = Ufi.Read("UFI: R3NN-3KVT-2XSG-W43J", out _)!;
        Assert.Equal(("DE", 268435455L), (content.Country, content.FormulationNumber));
        Assert.Equal(123456789, content.VatValue);
    }

    [Theory]
    [InlineData("XI", "123456789", 1, "knows no VAT numbers of 'XI'")]
    [InlineData("DE", "12345678", 1, "nine digits")]
    [InlineData("DE", "123456789", 268435456, "between 0 and")]
    [InlineData("DE", "123456789", -1, "between 0 and")]
    [InlineData("AT", "12345678", 1, "U and eight digits")]
    public void WhatTheFormatDoesNotKnowIsRefused(string country, string vat, long formulation, string expected)
    {
        Assert.Null(Ufi.Make(country, vat, formulation, out string why));
        Assert.Contains(expected, why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("R3NN-3KVT-2XSG-W43K", "check character")]
    [InlineData("R3NN-3KVT-2XSG", "is no UFI")]
    [InlineData("R3NN-3KVT-2XSG-W43B", "is no UFI")]
    public void AMisreadUfiIsRefused(string ufi, string expected)
    {
        Assert.Null(Ufi.Read(ufi, out string why));
        Assert.Contains(expected, why, StringComparison.Ordinal);
    }

    // Every single wrong sign is caught: the weights 1 to 16 are all different from 0 modulo the prime 31.
    [Fact]
    public void EverySingleWrongSignIsCaught()
    {
        const string right = "C23SPQ2VAMH9VVRF";
        const string alphabet = "0123456789ACDEFGHJKMNPQRSTUVWXY";
        for (int i = 0; i < right.Length; i++)
        {
            foreach (char c in alphabet.Where(c => c != right[i]))
            {
                Assert.Null(Ufi.Read(right[..i] + c + right[(i + 1)..], out _));
            }
        }
    }
}
