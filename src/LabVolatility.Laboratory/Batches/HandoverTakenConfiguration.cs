using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Batches;

internal sealed class HandoverTakenConfiguration : IEntityTypeConfiguration<HandoverTaken>
{
    public void Configure(EntityTypeBuilder<HandoverTaken> taken)
    {
        taken.ToTable("handover_takings");
        taken.HasKey(t => t.NoteId);
        taken.Property(t => t.NoteId).ValueGeneratedNever();
        taken.Property(t => t.ByName).HasMaxLength(Lengths.Name);
        taken.HasOne<Person>().WithMany().HasForeignKey(t => t.By);
    }
}
