using System.Net;
using System.Net.Http.Json;
using Chandlery.Tests.Support;
using Chandlery.Workbench;
using Microsoft.Playwright;
using SkiaSharp;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Chandlery.Tests.Workbench;

/// <summary>Who gets in: every account on the machine reaches the address, and only who has the key may use it.</summary>
public sealed class EntranceTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Theory]
    [InlineData("/")]
    [InlineData("/?key=")]
    [InlineData("/?key=0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef")]
    [InlineData("/workbench.js")]
    [InlineData("/api/candles")]
    [InlineData("/api/symbol?name=GHS07")]
    public async Task Without_the_key_nothing_is_answered(string path)
    {
        await using Visit visit = await browser.Open();
        using var client = new HttpClient();
        HttpResponseMessage answer = await client.GetAsync(visit.Address + path);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        Assert.Equal(
            HttpStatusCode.Forbidden,
            (await client.PostAsJsonAsync(visit.Address + "/api/desk", new { id = "fig-tin" })).StatusCode
        );
    }

    [Fact]
    public async Task The_key_gives_a_cookie_that_no_script_reads_and_leaves_the_address()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/fig-tin");
        Assert.Equal(visit.Address + "/#/candle/fig-tin", visit.Page.Url);
        BrowserContextCookiesResult cookie = (await visit.Page.Context.CookiesAsync()).Single();
        Assert.True(cookie.HttpOnly);
        Assert.Equal(SameSiteAttribute.Strict, cookie.SameSite);
        Assert.Equal("", await visit.Page.EvaluateAsync<string>("document.cookie"));
        Assert.Empty(visit.Trouble);
    }

    [Fact]
    public async Task The_address_that_a_browser_is_started_with_opens_once()
    {
        await using Visit visit = await browser.Open();
        string once = visit.Server.WayInForOnce();
        Assert.NotEqual(visit.Server.WayIn, once);
        using var first = new HttpClient();
        Assert.Equal(HttpStatusCode.OK, (await first.GetAsync(once)).StatusCode);
        using var second = new HttpClient();
        Assert.Equal(HttpStatusCode.Forbidden, (await second.GetAsync(once)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await second.GetAsync(visit.Server.WayIn)).StatusCode);
    }

    // Another address of this machine stands for the one that a network reaches it by.
    private static readonly IPAddress Nearby = IPAddress.Parse("127.0.0.2");

    [Fact]
    public async Task A_phone_gets_in_once_the_maker_opens_the_door_and_stands_outside_when_it_is_shut()
    {
        await using Visit visit = await browser.Open(nearby: Nearby);
        await visit.Go("#/candle/harbour-bowl/pour");
        await visit.Button("Weigh on my phone").ClickAsync();
        await visit.Page.GetByAltText("QR code of the address below").WaitForAsync();
        await visit.Picture("by-phone");
        string way = await visit.Page.Locator(".by-phone code").InnerTextAsync();
        Assert.Equal(way, await Read(visit.Page.GetByAltText("QR code of the address below")));
        Assert.StartsWith("http://127.0.0.2:", way, StringComparison.Ordinal);

        await using IBrowserContext hand = await visit.Page.Context.Browser!.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 360, Height = 660 },
                HasTouch = true,
            }
        );
        IPage phone = await hand.NewPageAsync();
        await phone.GotoAsync(way);
        await Assertions.Expect(phone.GetByRole(AriaRole.Button, new() { Name = "Begin to weigh" })).ToBeVisibleAsync();
        await Assertions.Expect(phone.GetByRole(AriaRole.Button, new() { Name = "Weigh on my phone" })).ToHaveCountAsync(0);
        await phone.GetByRole(AriaRole.Button, new() { Name = "Begin to weigh" }).ClickAsync();
        await Assertions.Expect(phone.Locator(".huge")).ToBeVisibleAsync();

        // Its code has been used, and who only knows the address stays outside.
        using var other = new HttpClient();
        Assert.Equal(HttpStatusCode.Forbidden, (await other.GetAsync(way.Split('#')[0])).StatusCode);
        Assert.Equal(
            HttpStatusCode.Forbidden,
            (await other.GetAsync(new Uri(way).GetLeftPart(UriPartial.Authority) + "/api/folder")).StatusCode
        );
        using var misnamed = new HttpRequestMessage(HttpMethod.Get, new Uri(way).GetLeftPart(UriPartial.Authority) + "/");
        misnamed.Headers.Host = "workbench.example:" + new Uri(way).Port;
        Assert.Equal("This address is not the workbench's own.", await (await other.SendAsync(misnamed)).Content.ReadAsStringAsync());

        await visit.Button("Shut the door").ClickAsync();
        await visit.Says("no phone reaches the page any more");
        await Assert.ThrowsAsync<HttpRequestException>(() => other.GetAsync(new Uri(way).GetLeftPart(UriPartial.Authority)));
    }

    private static async Task<string> Read(ILocator code)
    {
        using SKBitmap picture = SKBitmap.Decode(await code.ScreenshotAsync());
        byte[] grey = [.. picture.Pixels.Select(p => p.Red)];
        var source = new RGBLuminanceSource(grey, picture.Width, picture.Height, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source))).Text;
    }

    [Fact]
    public async Task Where_there_is_no_private_network_the_door_stays_shut_and_the_page_says_why()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl/pour");
        await visit.Button("Weigh on my phone").ClickAsync();
        await visit.Says("This computer is in no private network");
    }

    [Theory]
    [InlineData("10.0.0.1", true)]
    [InlineData("11.0.0.1", false)]
    [InlineData("172.15.255.255", false)]
    [InlineData("172.16.0.0", true)]
    [InlineData("172.31.255.255", true)]
    [InlineData("172.32.0.0", false)]
    [InlineData("192.167.1.1", false)]
    [InlineData("192.168.0.1", true)]
    [InlineData("203.0.113.7", false)]
    [InlineData("fd00::2", false)]
    [Outside("RFC 1918, section 3: the blocks of addresses for private networks")]
    public void Only_a_private_network_is_let_in(string address, bool isPrivate) =>
        Assert.Equal(isPrivate, NearbyAddress.Choose([IPAddress.Parse(address)]) is not null);
}
