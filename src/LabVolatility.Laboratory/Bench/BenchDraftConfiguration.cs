using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Bench;

internal sealed class BenchDraftConfiguration : IEntityTypeConfiguration<BenchDraft>
{
    public void Configure(EntityTypeBuilder<BenchDraft> draft)
    {
        draft.ToTable("bench_drafts");
        draft.HasIndex(d => new { d.TestId, d.PersonId }).IsUnique();
        draft.HasOne<AssignedTest>().WithMany().HasForeignKey(d => d.TestId);
        draft.HasOne<Person>().WithMany().HasForeignKey(d => d.PersonId);
    }
}
