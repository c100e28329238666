using System.Net;
using System.Net.Http.Json;
using Microsoft.Playwright;

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
}
