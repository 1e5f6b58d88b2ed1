using Microsoft.Playwright;

namespace Gatewright.Browser.Tests;

/// <summary>The ways in: the first keeper, a member, a crew, a passkey.</summary>
public sealed class ComingInTests(Chromium chromium)
{
    private const string Password = "four dry oars stand";

    [Fact]
    public Task A_club_is_opened_and_others_are_let_in() => LetInAsync(isPhone: true, isDark: false);

    /// <summary>The same pages, laid out otherwise and in their other colours.</summary>
    [Fact(Skip = LongRun.Why, SkipUnless = nameof(LongRun.IsAsked), SkipType = typeof(LongRun))]
    public Task A_club_is_opened_and_others_are_let_in_at_a_desk_at_dusk() => LetInAsync(isPhone: false, isDark: true);

    private async Task LetInAsync(bool isPhone, bool isDark)
    {
        await using ServedSite site = await ServedSite.StartAsync(isDemo: false);
        await using Visit ofKeeper = await chromium.VisitAsync(site.Address, isPhone, isDark);
        IPage keeper = ofKeeper.Page;
        await keeper.GotoAsync(await site.FirstLinkAsync());
        await keeper.HoldAsync("first-keeper");
        await OpenClubAsync(keeper, "short");
        await Assertions.Expect(keeper.GetByRole(AriaRole.Alert)).ToContainTextAsync("12 to 128 characters");
        await keeper.HoldAsync("first-keeper-asked");
        await OpenClubAsync(keeper, Password);
        await Assertions.Expect(keeper.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Island school");
        await keeper.HoldAsync("empty-shed");

        await keeper.GetByRole(AriaRole.Link, new() { Name = "People" }).ClickAsync();
        await keeper.GetByLabel("Who is it for?").FillAsync("A coach");
        await keeper.GetByLabel("As").SelectOptionAsync("coach");
        await keeper.GetByRole(AriaRole.Button, new() { Name = "Make a link" }).ClickAsync();
        string link = (await keeper.Locator(".made code").TextContentAsync())!;
        await keeper.HoldAsync("people");

        await using Visit ofCoach = await chromium.VisitAsync(site.Address, isPhone, isDark);
        IPage coach = ofCoach.Page;
        await coach.GotoAsync(link);
        await coach.HoldAsync("join");
        await coach.GetByLabel("Your name, as the others see it").FillAsync("Coach");
        await coach.GetByLabel("A name to sign in by").FillAsync("coach");
        await coach.GetByLabel("A password").FillAsync(Password);
        await coach.GetByRole(AriaRole.Button, new() { Name = "Join" }).ClickAsync();
        await Assertions.Expect(coach.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Island school");
        await Assertions.Expect(coach.GetByRole(AriaRole.Link, new() { Name = "People" })).ToHaveCountAsync(0);

        await using Visit ofLate = await chromium.VisitAsync(site.Address, isPhone, isDark);
        IPage late = ofLate.Page;
        await late.GotoAsync(link);
        await Assertions.Expect(late.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("This link does not work");
        await late.HoldAsync("used-link");
    }

    [Fact]
    public async Task Signed_out_and_in_again_by_password_and_by_passkey()
    {
        await using ServedSite site = await ServedSite.StartAsync(isDemo: false);
        await using Visit visit = await chromium.VisitAsync(site.Address, isPhone: true, isDark: false);
        IPage page = visit.Page;
        ICDPSession devtools = await page.Context.NewCDPSessionAsync(page);
        await devtools.SendAsync("WebAuthn.enable");
        await devtools.SendAsync("WebAuthn.addVirtualAuthenticator", new()
        {
            ["options"] = new Dictionary<string, object>
            {
                ["protocol"] = "ctap2",
                ["transport"] = "internal",
                ["hasResidentKey"] = true,
                ["hasUserVerification"] = true,
                ["isUserVerified"] = true,
            },
        });
        await page.GotoAsync(await site.FirstLinkAsync());
        await OpenClubAsync(page, Password);
        await page.GetByRole(AriaRole.Link, new() { Name = "Account" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a passkey" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Passkey 1")).ToBeVisibleAsync();
        await page.GetByLabel("The name the others see").FillAsync("Another name");
        await page.GetByRole(AriaRole.Button, new() { Name = "Change the name" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Another name");
        await page.HoldAsync("account");

        await SignOutAsync(page);
        await page.GotoAsync("/sign-in");
        await page.GetByLabel("Name").FillAsync("keeper");
        await page.GetByLabel("Password").FillAsync("not the password");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("do not go together");
        await page.HoldAsync("sign-in");
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Island school");

        await SignOutAsync(page);
        await page.GotoAsync("/sign-in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in with a passkey" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Island school");
    }

    [Fact]
    public async Task An_account_is_ended_by_whoever_has_it()
    {
        await using ServedSite site = await ServedSite.StartAsync(isDemo: false);
        await using Visit visit = await chromium.VisitAsync(site.Address, isPhone: false, isDark: false);
        IPage page = visit.Page;
        await page.GotoAsync(await site.FirstLinkAsync());
        await OpenClubAsync(page, Password);
        await page.GetByRole(AriaRole.Link, new() { Name = "Account" }).ClickAsync();
        await EndAsync(page, "not the password");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("your password");
        await EndAsync(page, Password);
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Sign in" })).ToBeVisibleAsync();
    }

    private static async Task EndAsync(IPage page, string password)
    {
        await page.Locator("summary", new() { HasText = "End this account" }).ClickAsync();
        await page.GetByLabel("Your password, to be sure").FillAsync(password);
        await page.GetByRole(AriaRole.Button, new() { Name = "End the account" }).ClickAsync();
    }

    private static async Task OpenClubAsync(IPage page, string password)
    {
        await page.GetByLabel("What is the club or school called?").FillAsync("Island school");
        await page.GetByLabel("Your name, as the others see it").FillAsync("Keeper");
        await page.GetByLabel("A name to sign in by").FillAsync("keeper");
        await page.GetByLabel("A password").FillAsync(password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the club" }).ClickAsync();
    }

    private static async Task SignOutAsync(IPage page)
    {
        await page.GotoAsync("/account");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Sign in" })).ToBeVisibleAsync();
    }
}
