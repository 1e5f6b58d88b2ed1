using Bunit;
using Gatewright.App.Frame;
using Gatewright.App.Rig;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.JSInterop;

namespace Gatewright.App.Tests.Frame;

/// <summary>A script that comes when whoever asked for it is gone is told of nobody: to name what was let go of is an error.</summary>
public class LateScriptTests
{
    [Fact]
    public async Task The_frame_that_went_while_a_club_opened_watches_for_no_version()
    {
        var script = new LateScript();
        await using var page = new BunitContext();
        page.Services.AddSingleton(typeof(Texts<>));
        page.Services.AddSingleton<IJSRuntime>(script);
        page.Render<NewVersion>();

        await page.DisposeComponentsAsync();
        await script.ComeAsync();

        Assert.Equal(["import ./newer.js"], script.Asked);
    }

    [Fact]
    public async Task The_page_of_a_boat_that_was_left_at_once_listens_to_no_key()
    {
        var script = new LateScript();
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", script: script);
        await club.RecordElsewhereAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }), new RoundStarted("r"));
        club.Page.Render<ReadPage>(p => p.Add(r => r.Round, "r").Add(r => r.Boat, "teal"));

        await club.Page.DisposeComponentsAsync();
        await script.ComeAsync();

        Assert.Equal(["import ./round.js"], script.Asked.Where(a => a != "gatewright.namePage"));
    }

    [Fact]
    public async Task The_page_of_a_rig_that_was_left_at_once_listens_to_no_key()
    {
        var script = new LateScript();
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", script: script);
        await club.RecordElsewhereAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }));
        club.Page.Render<MeasurePage>(p => p.Add(r => r.Boat, "teal"));

        await club.Page.DisposeComponentsAsync();
        await script.ComeAsync();

        Assert.Equal(["import ./round.js"], script.Asked.Where(a => a != "gatewright.namePage"));
    }

    /// <summary>A script that comes when it is told to, and notes what is asked of it.</summary>
    private sealed class LateScript : IJSRuntime, IJSObjectReference
    {
        private readonly TaskCompletionSource _comes = new();

        public List<string> Asked { get; } = [];

        public async Task ComeAsync()
        {
            _comes.SetResult();
            await Task.Delay(100);
        }

        public ValueTask<T> InvokeAsync<T>(string identifier, object?[]? args) => InvokeAsync<T>(identifier, CancellationToken.None, args);

        public async ValueTask<T> InvokeAsync<T>(string identifier, CancellationToken cancellationToken, object?[]? args)
        {
            Asked.Add(identifier == "import" ? $"import {args![0]}" : identifier);
            await _comes.Task;
            return this is T module ? module : default!;
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
