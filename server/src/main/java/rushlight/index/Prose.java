package rushlight.index;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;

/** How text becomes words: capitals, accents and, where asked, the endings of words do not matter; no word is dropped. */
final class Prose extends Analyzer {
    private final boolean endingsMatter;

    private Prose(boolean endingsMatter) {
        this.endingsMatter = endingsMatter;
    }

    /** For finding: "wrong-armed" and "wrong arms" have the same words. */
    static Prose read() {
        return new Prose(false);
    }

    /** For completing: words as they are typed. */
    static Prose typed() {
        return new Prose(true);
    }

    @Override
    protected TokenStreamComponents createComponents(String field) {
        Tokenizer words = new StandardTokenizer();
        TokenStream plain = new ASCIIFoldingFilter(new LowerCaseFilter(new EnglishPossessiveFilter(words)));
        return new TokenStreamComponents(words, endingsMatter ? plain : new PorterStemFilter(plain));
    }

    @Override
    protected TokenStream normalize(String field, TokenStream in) {
        return new ASCIIFoldingFilter(new LowerCaseFilter(in));
    }
}
