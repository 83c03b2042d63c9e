using LabVolatility.Browser.Tests.Harness;

namespace LabVolatility.Browser.Tests.Guide;

/// <summary>What a page of the guide shows.</summary>
/// <param name="Name">Begins its file's name.</param>
/// <param name="Person">Whose screen it is; null: nobody has signed in.</param>
/// <param name="Show">The way there; signs and reports nothing, so that the demo stays as it is.</param>
/// <param name="Shots">The pictures that the guide has of it.</param>
internal sealed record GuidePicture(string Name, DemoPerson? Person, Func<Visit, Task> Show, params Shot[] Shots);
