namespace LabVolatility.Laboratory.People;

/// <summary>Somebody who has a page about a thing open. Never stored: it says nothing about the work.</summary>
/// <param name="Page">The open page.</param>
/// <param name="PersonId">Who.</param>
/// <param name="Name">Full name.</param>
/// <param name="Place">The thing: "sample S2605-0012-X".</param>
/// <param name="Since">When the page was opened.</param>
/// <param name="Doing">What is being done there, such as the method that is measured; null for looking.</param>
/// <param name="EnteringSince">When typing began; null where nothing was typed.</param>
public sealed record PresentPerson(
    Guid Page, Guid PersonId, string Name, string Place, DateTimeOffset Since, string? Doing = null, DateTimeOffset? EnteringSince = null);
