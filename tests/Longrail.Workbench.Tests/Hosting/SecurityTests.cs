using System.Net;
using System.Net.Http.Headers;
using Longrail.Workbench.Hosting;
using Longrail.Workbench.Tables;
using Longrail.Workbench.Tests.Browsing;
using Microsoft.AspNetCore.Http;

namespace Longrail.Workbench.Tests.Hosting;

/// <summary>What the host lets in and what it refuses.</summary>
public sealed class SecurityTests(Bench bench)
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static string FirstLink => SceneLink.Of(SampleScenes.Opening.Scene!);

    [Theory]
    [InlineData("")]
    [InlineData("sheet.css")]
    [InlineData("picture.svg")]
    [InlineData("no-such-place")]
    public async Task Every_answer_carries_the_headers_that_keep_the_page_to_itself(string path)
    {
        using HttpResponseMessage answer = await bench.Http.GetAsync(bench.Address + path, Stop);

        string policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http:", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("DENY", Assert.Single(answer.Headers.GetValues("X-Frame-Options")));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Theory]
    [InlineData("attacker.example")]
    [InlineData("attacker.example:80")]
    [InlineData("127.0.0.1.attacker.example")]
    [InlineData("192.168.1.20")]
    public async Task A_foreign_host_name_is_refused(string host)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, bench.Address);
        request.Headers.Host = host;
        using HttpResponseMessage answer = await bench.Http.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData("Origin", "https://attacker.example")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://127.0.0.1:1")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task Another_site_is_refused(string header, string value)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, bench.Address + "_blazor/negotiate");
        request.Headers.Add(header, value);
        using HttpResponseMessage answer = await bench.Http.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task A_link_from_another_site_may_be_followed()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, bench.Address);
        request.Headers.Add("Sec-Fetch-Site", "cross-site");
        request.Headers.Add("Sec-Fetch-Mode", "navigate");
        using HttpResponseMessage answer = await bench.Http.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task A_body_larger_than_a_scene_is_refused()
    {
        using var body = new ByteArrayContent(new byte[2_000_000]);
        using var request = new HttpRequestMessage(HttpMethod.Post, bench.Address + "_blazor/negotiate") { Content = body };
        // Asks before it sends: the answer comes before the connection is closed on the body.
        request.Headers.ExpectContinue = true;
        using HttpResponseMessage answer = await bench.Http.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    [Theory]
    [InlineData("picture.svg", "", "no link")]
    [InlineData("picture.png", "t=1.AAAA", "damaged")]
    [InlineData("sheet", "t=%3Cscript%3E", "no link")]
    [InlineData("contrast.svg", "t=1.!!", "damaged")]
    public async Task A_broken_link_is_answered_with_a_sentence(string path, string query, string words)
    {
        using HttpResponseMessage answer = await bench.Http.GetAsync($"{bench.Address}{path}?{query}", Stop);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(new MediaTypeHeaderValue("text/plain") { CharSet = "utf-8" }, answer.Content.Headers.ContentType);
        Assert.Contains(words, await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("picture.exe")]
    [InlineData("contrast.html")]
    public async Task Only_the_three_forms_of_a_picture_exist(string path)
    {
        using HttpResponseMessage answer = await bench.Http.GetAsync($"{bench.Address}{path}?t={FirstLink}", Stop);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Theory]
    [InlineData("localhost:5217", false, true)]
    [InlineData("127.0.0.1:5217", false, true)]
    [InlineData("[::1]:5217", false, true)]
    [InlineData("10.0.0.4:5217", false, false)]
    [InlineData("10.0.0.4:5217", true, true)]
    [InlineData("table.example", true, false)]
    [InlineData("", false, false)]
    public void Only_this_machine_goes_by_our_name(string host, bool isLan, bool isOurs) =>
        Assert.Equal(isOurs, RequestGuard.IsOurs(new HostString(host), isLan));

    [Fact]
    public async Task With_lan_nothing_is_seen_without_the_code()
    {
        await using WorkbenchProcess open = await WorkbenchProcess.StartAsync("--port", "0", "--lan");
        string code = open.Said.Split("Code for this session: ")[1].Split('\n')[0].Trim();
        var address = new Uri($"http://127.0.0.1:{new Uri(open.Address).Port}/");
        using var handler = new HttpClientHandler { AllowAutoRedirect = false };
        using var http = new HttpClient(handler) { BaseAddress = address };

        using HttpResponseMessage first = await http.GetAsync("/", Stop);
        Assert.Equal(HttpStatusCode.Redirect, first.StatusCode);
        Assert.Equal("/code", first.Headers.Location!.OriginalString);
        using HttpResponseMessage circuit = await http.PostAsync("/_blazor/negotiate?negotiateVersion=1", null, Stop);
        Assert.Equal(HttpStatusCode.Unauthorized, circuit.StatusCode);
        using HttpResponseMessage picture = await http.GetAsync($"/picture.svg?t={FirstLink}", Stop);
        Assert.Equal(HttpStatusCode.Redirect, picture.StatusCode);

        Assert.Equal(HttpStatusCode.Forbidden, await TypeAsync(http, "WRONGONE"));
        Assert.Equal(HttpStatusCode.Redirect, await TypeAsync(http, code.ToLowerInvariant()));
        using HttpResponseMessage page = await http.GetAsync("/", Stop);
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
    }

    [Fact]
    public void A_code_cannot_be_guessed_by_trying()
    {
        var code = new LanCode(isAsked: true);
        var now = new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc);
        for (int k = 0; k < 10; k++)
            Assert.Null(code.Try("AAAAAAAA" + k, now));
        Assert.Null(code.Try(code.Text, now));
        string? pass = code.Try(code.Text, now.AddMinutes(2));
        Assert.NotNull(pass);
        Assert.True(code.IsPass(pass));
        Assert.False(code.IsPass(null));
        Assert.False(code.IsPass(pass[..^1] + (pass[^1] == '0' ? '1' : '0')));
    }

    [Theory]
    [InlineData("--port", "70000")]
    [InlineData("--port", "-1")]
    [InlineData("--port", "")]
    [InlineData("--open", "now")]
    public void A_wrong_argument_is_named(string name, string value)
    {
        using var error = new StringWriter();
        Assert.Null(WorkbenchSettings.Parse([name, value], error));
        Assert.Contains(name, error.ToString(), StringComparison.Ordinal);
    }

    private static async Task<HttpStatusCode> TypeAsync(HttpClient http, string code)
    {
        string page = await http.GetStringAsync("/code", Stop);
        string field = page.Split("type=\"hidden\" name=\"")[1].Split('"')[0];
        string token = page.Split($"name=\"{field}\" value=\"")[1].Split('"')[0];
        using var form = new FormUrlEncodedContent(new Dictionary<string, string> { ["code"] = code, [field] = token });
        using HttpResponseMessage answer = await http.PostAsync("/code", form, Stop);
        return answer.StatusCode;
    }
}
