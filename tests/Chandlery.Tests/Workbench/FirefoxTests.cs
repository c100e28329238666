using System.Globalization;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Workbench;

/// <summary>The page in another engine than the one that the other tests use.</summary>
public sealed class FirefoxTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [NeedsToolFact(Firefox.Tool)]
    public async Task What_is_typed_and_dragged_is_followed_and_kept()
    {
        await using Visit visit = await browser.Open();
        await using Firefox firefox = await Firefox.Open(1440, 900);
        await firefox.Go(visit.Server.WayIn + "#/candle/harbour-bowl");
        await firefox.Until("document.querySelector('#sentence')?.textContent.startsWith('May be sold')");
        await firefox.Until("document.querySelector('#preview img')?.naturalWidth > 0");
        Assert.Equal("true", await firefox.Value("document.documentElement.scrollWidth <= innerWidth"));

        await firefox.Value(
            "(() => { const load = document.querySelector('#load input'); load.value = '3'; load.dispatchEvent(new Event('input', { bubbles: true })); })()"
        );
        await firefox.Until("document.querySelector('#sentence').textContent.includes('without a warning')");
        await firefox.Until("document.querySelector('#kept').textContent === 'All changes kept'");
        Assert.Contains("percent: 3,", visit.Read("candles/harbour-bowl.yaml"), StringComparison.Ordinal);

        int[] line =
        [
            .. (
                await firefox.Value(
                    "(() => { const r = document.querySelector('svg.line').getBoundingClientRect(); return [r.left, r.top, r.width, r.height].map(Math.round).join(' '); })()"
                )
            )
                .Split(' ')
                .Select(n => int.Parse(n, CultureInfo.InvariantCulture)),
        ];
        int y = line[1] + (line[3] / 2);
        await firefox.Drag(line[0] + (line[2] / 4), y, line[0] + (line[2] * 3 / 5), y);
        await firefox.Until("Number(document.querySelector('#load input').value) > 5");
        await firefox.Until("document.querySelector('#sentence').textContent.includes('with this warning label')");
        foreach (
            string hash in new[] { "#/", "#/supplies", "#/notebook", "#/register", "#/candle/fig-tin/papers", "#/candle/fig-tin/duties" }
        )
        {
            await firefox.Value($"location.hash = '{hash}'");
            await firefox.Until($"location.hash === '{hash}' && document.querySelector('h1') !== null");
        }

        await firefox.Until("document.querySelector('.duties .sentence') !== null");
        Assert.Empty(firefox.Errors);
    }
}
