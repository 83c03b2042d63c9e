using LabVolatility.Browser.Tests.Harness;
using Xunit;

namespace LabVolatility.Browser.Tests.Guide;

/// <summary>What the guide shows can be reached as it says. docs/guide/pictures.sh runs this and keeps the pictures.</summary>
public sealed class GuideTests(Stage stage)
{
    public static TheoryData<string> Names => [.. GuidePictures.All.Select(picture => picture.Name)];

    [Theory, MemberData(nameof(Names))]
    public async Task Picture_OfTheGuide_CanBeReached(string name)
    {
        var picture = GuidePictures.All.Single(p => p.Name == name);

        await (picture.Person is { } person ? stage.VisitAsync(Screen.Desk, person, ShowAsync) : stage.VisitAsync(Screen.Desk, ShowAsync));

        async Task ShowAsync(Visit visit)
        {
            await picture.Show(visit);
            if (TestSettings.GuidePictures is not { } folder)
                return;

            foreach (var shot in picture.Shots)
                await visit.KeepAsync(Path.Combine(folder, $"{name}-{shot}.webp"), shot.Screen, shot.Scheme);
        }
    }
}
