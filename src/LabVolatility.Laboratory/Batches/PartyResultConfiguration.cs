using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Batches;

internal sealed class PartyResultConfiguration : IEntityTypeConfiguration<PartyResult>
{
    public void Configure(EntityTypeBuilder<PartyResult> result)
    {
        result.ToTable("party_results");
        result.Property(r => r.Party).HasMaxLength(Lengths.Name);
        result.Property(r => r.Laboratory).HasMaxLength(Lengths.Name);
        result.Property(r => r.SampleNumber).HasMaxLength(Lengths.Code);
        result.Property(r => r.Quantity).HasMaxLength(Lengths.Code);
        result.Property(r => r.Correlation).HasMaxLength(Lengths.Code);
        result.Property(r => r.Method).HasMaxLength(Lengths.Code);
        result.Property(r => r.Edition).HasMaxLength(Lengths.Code);
        result.Property(r => r.Typed).HasMaxLength(Lengths.Name);
        result.Property(r => r.Unit).HasMaxLength(Lengths.Unit);
        result.Property(r => r.Reference).HasMaxLength(Lengths.Name);
        result.Property(r => r.Seals).HasMaxLength(Lengths.Note);
        result.Property(r => r.EnteredByName).HasMaxLength(Lengths.Name);
        result.HasIndex(r => r.BatchId);
        result.HasOne<Batch>().WithMany().HasForeignKey(r => r.BatchId);
        result.HasOne<Person>().WithMany().HasForeignKey(r => r.EnteredBy);
    }
}
