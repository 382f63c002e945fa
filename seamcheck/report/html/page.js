"use strict";(()=>{var m0="http://www.w3.org/2000/svg";function Yd(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1)){if(n==="style"||n.startsWith("on"))throw new Error(`attribute ${n} is not set from here`);i.setAttribute(n,s===!0?"":String(s))}return yo(i,e),i}function yo(i,t){for(let e of t)e!=null&&(Array.isArray(e)?yo(i,e):i.append(e instanceof Node?e:String(e)))}function qt(i,t=null,...e){return Yd(document.createElement(i),t,e)}function wt(i,t=null,...e){return Yd(document.createElementNS(m0,i),t,e)}function Me(i){return document.getElementById(i)}function nn(i){for(;i.lastChild;)i.lastChild.remove()}var st=i=>String(Math.round(i*100)/100);function hn(i){return getComputedStyle(document.documentElement).getPropertyValue(`--${i}`).trim()}function vo(i,t){let e=!1,n=()=>{e||(e=!0,s.disconnect(),t())},s=new IntersectionObserver(r=>{r.some(o=>o.isIntersecting)&&n()},{rootMargin:"400px"});return s.observe(i),n}var Zd=()=>matchMedia("(prefers-reduced-motion: reduce)").matches;function ph(i){let t={};for(let e of i.querySelectorAll("[data-key]"))t[e.dataset.key]=e.value.trim();return t}var g0=i=>Object.values(i).some(t=>t!=="");function _0(i){let t=[...document.querySelectorAll("[data-answer]")].flatMap(s=>{let r=i.findings.find(a=>String(a.n)===s.dataset.answer),o=ph(s);return g0(o)?[{id:r.id,rule:r.rule,place:r.place??{},...o}]:[]}),e=[...document.querySelectorAll("[data-question]")].map(s=>({key:s.dataset.question,...ph(s)})),n=[...document.querySelectorAll("[data-role]")].map(s=>({role:s.dataset.role,...ph(s)}));return{document:"seamcheck-answers",schema_version:1,model:i.model,findings:t,questions:e.filter(s=>s.answer),approval:n.filter(s=>s.name||s.decision)}}function Jd(i){Me("save-answers")?.addEventListener("click",()=>{let t=JSON.stringify(_0(i),null,1),e=document.createElement("a");e.href=URL.createObjectURL(new Blob([t],{type:"application/json"})),e.download=`${i.model.file.replace(/\.[^.]*$/,"").replace(/[^A-Za-z0-9._-]+/g,"-")||"review"}-answers.json`,e.click(),URL.revokeObjectURL(e.href),Me("saved").textContent=`Saved as ${e.download}.`})}var x0=new Uint8Array(new Uint32Array([1]).buffer)[0]===1;function mh(i){let t=atob(i),e=new Uint8Array(t.length);for(let n=0;n<t.length;n++)e[n]=t.charCodeAt(n);return e.buffer}function vr(i){let t=mh(i);if(!x0){let e=new DataView(t);for(let n=0;n+4<=t.byteLength;n+=4)e.setUint32(n,e.getUint32(n,!0),!1)}return t}var ba=class{offsets;segments;owner;slopes;shade;others;row=new Map;step;constructor(t){this.offsets=new Uint32Array(vr(t.offsets)),this.segments=new Float32Array(vr(t.segments)),this.owner=new Uint8Array(mh(t.owner)),this.slopes=t.slope?[...new Float32Array(vr(t.slope))]:t.stations.map(()=>0),this.shade=(t.shade??[]).map(([e,n,s,r,o,a,l,c,h])=>({station:e,low:n,high:s,share:r,u:o,v:a,along:l,part:c,leans:h})),this.others=t.others??[],t.stations.forEach((e,n)=>this.row.set(e,n)),this.step=t.stations.slice(1).reduce((e,n,s)=>Math.max(e,Math.min(20,n-t.stations[s])),1)}at(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.outline(n)}return null}slope(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.slopes[n]}return 0}shadeAt(t){return this.shade.filter(e=>e.station===t)}ownerOf(t){let e=this.others.indexOf(t);return e<0?void 0:e+2}partOf(t){return this.others[t-2]??null}isNeighbour(t){return!this.row.has(t)}outline(t){let[e,n]=[this.offsets[t],this.offsets[t+1]];return{segments:this.segments.subarray(4*e,4*n),owner:this.owner.subarray(e,n)}}};function jd(i){return{part:i.part,positions:new Float32Array(vr(i.positions)),triangles:new Uint32Array(vr(i.triangles)),face:new Int32Array(vr(i.face)),leftOut:i.left_out??0}}async function Kd(i){let t=new Blob([mh(i.textContent.trim())]).stream().pipeThrough(new DecompressionStream("gzip"));return JSON.parse(await new Response(t).text())}var wa=class{constructor(t){this.payload=t}payload;unit(t){let e=this.payload.quantities[t]?.unit??"";return e==="1"?"":e}title(t){return this.payload.quantities[t]?.title??t}bare(t,e){let n=t.toFixed(this.payload.quantities[e]?.decimals??3);return Number(n)===0?n.replace("-",""):n}value(t,e){if(t==null||!Number.isFinite(t))return"not measured";if(e.startsWith("trap_open"))return t?"open":"closed";let n=this.unit(e);return n?`${this.bare(t,e)} ${n}`:this.bare(t,e)}reason(t,e,n,s){let r=this.payload.joints.find(o=>o.id===t)?.contours.find(o=>o.id===e);for(let o of r?.unmeasured??[]){if(o.column!==n)continue;let{from_s:a,to_s:l}=o;if(a<=l?s>=a-1e-6&&s<=l+1e-6:s>=a-1e-6||s<=l+1e-6)return this.payload.reasons[o.why]??o.why}return""}part(t){return this.payload.parts.find(e=>e.id===t)?.name||t}},Mr={"must-fix":"◆",attention:"▲",note:"○"};function Ms(i){let t=i.map(e=>e.n);return t.slice(0,3).join("·")+(t.length>3?` +${t.length-3}`:"")}var Ea=class{constructor(t){this.payload=t;this.words=new wa(t)}payload;words;sections=new Map;unpacked=null;sectionsOf(t,e){let n=`${t}/${e}`;if(!this.sections.has(n)){let s=this.payload.view?.sections.find(r=>r.joint===t&&r.contour===e);this.sections.set(n,s?new ba(s):null)}return this.sections.get(n)}get meshes(){return this.unpacked??=(this.payload.view?.meshes??[]).map(jd),this.unpacked}};var y0="uplot",v0="u-hz",M0="u-vt",S0="u-title",b0="u-wrap",w0="u-under",E0="u-over",T0="u-axis",qs="u-off",A0="u-select",R0="u-cursor-x",C0="u-cursor-y",P0="u-cursor-pt",I0="u-legend",L0="u-live",D0="u-inline",N0="u-series",U0="u-marker",Qd="u-label",F0="u-value",So="width",bo="height";var tf="bottom",Sr="left",gh="right",Dh="#000",ef=Dh+"0",_h="mousemove",nf="mousedown",xh="mouseup",sf="mouseenter",rf="mouseleave",of="dblclick",O0="resize",B0="scroll",af="change",Pa="dppxchange",Nh="--",Cr=typeof window<"u",bh=Cr?document:null,wr=Cr?window:null,k0=Cr?navigator:null,Ee,Ta;function wh(){let i=devicePixelRatio;Ee!=i&&(Ee=i,Ta&&Th(af,Ta,wh),Ta=matchMedia(`(min-resolution: ${Ee-.001}dppx) and (max-resolution: ${Ee+.001}dppx)`),$s(af,Ta,wh),wr.dispatchEvent(new CustomEvent(Pa)))}function ni(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function Eh(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function Ge(i,t,e){i.style[t]=e+"px"}function vi(i,t,e,n){let s=bh.createElement(i);return t!=null&&ni(s,t),e?.insertBefore(s,n),s}function fi(i,t){return vi("div",i,t)}var lf=new WeakMap;function zi(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=lf.get(i);r!=o&&(i.style.transform=r,lf.set(i,r),t<0||e<0||t>n||e>s?ni(i,qs):Eh(i,qs))}var cf=new WeakMap;function hf(i,t,e){let n=t+e,s=cf.get(i);n!=s&&(cf.set(i,n),i.style.background=t,i.style.borderColor=e)}var uf=new WeakMap;function df(i,t,e,n){let s=t+""+e,r=uf.get(i);s!=r&&(uf.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var Uh={passive:!0},z0={...Uh,capture:!0};function $s(i,t,e,n){t.addEventListener(i,e,n?z0:Uh)}function Th(i,t,e,n){t.removeEventListener(i,e,Uh)}Cr&&wh();function Mi(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:ii((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function zf(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var Vf=i=>i!=null,Gf=i=>i!=null&&i>0,Da=zf(Vf),V0=zf(Gf);function G0(i,t,e,n=0,s=!1){let r=s?V0:Da,o=s?Gf:Vf;[t,e]=r(i,t,e);let a=i[t],l=i[t];if(t>-1)if(n==1)a=i[t],l=i[e];else if(n==-1)a=i[e],l=i[t];else for(let c=t;c<=e;c++){let h=i[c];o(h)&&(h<a?a=h:h>l&&(l=h))}return[a??Ue,l??-Ue]}function Na(i,t,e,n){let s=mf(i),r=mf(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?Qi:Hf,a=s==1?ii:pi,l=r==1?pi:ii,c=a(o(gn(i))),h=l(o(gn(t))),u=Er(e,c),d=Er(e,h);return e==10&&(c<0&&(u=Fe(u,-c)),h<0&&(d=Fe(d,-h))),n||e==2?(i=u*s,t=d*r):(i=$f(i,u),t=Ua(t,d)),[i,t]}function Fh(i,t,e,n){let s=Na(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var Oh=.1,ff={mode:3,pad:Oh},Eo={pad:0,soft:null,mode:0},H0={min:Eo,max:Eo};function Ia(i,t,e,n){return Fa(e)?pf(i,t,e):(Eo.pad=e,Eo.soft=n?0:null,Eo.mode=n?3:0,pf(i,t,H0))}function be(i,t){return i??t}function W0(i,t,e){for(t=be(t,0),e=be(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function pf(i,t,e){let n=e.min,s=e.max,r=be(n.pad,0),o=be(s.pad,0),a=be(n.hard,-Ue),l=be(s.hard,Ue),c=be(n.soft,Ue),h=be(s.soft,-Ue),u=be(n.mode,0),d=be(s.mode,0),f=t-i,g=Qi(f),_=Wn(gn(i),gn(t)),p=Qi(_),m=gn(p-g);(f<1e-24||m>10)&&(f=0,(i==0||t==0)&&(f=1e-24,u==2&&c!=Ue&&(r=0),d==2&&h!=-Ue&&(o=0)));let v=f||_||1e3,A=Qi(v),M=Er(10,ii(A)),R=v*(f==0?i==0?.1:1:r),w=Fe($f(i-R,M/10),24),x=i>=c&&(u==1||u==3&&w<=c||u==2&&w>=c)?c:Ue,b=Wn(a,w<x&&i>=x?x:Si(x,w)),k=v*(f==0?t==0?.1:1:o),N=Fe(Ua(t+k,M/10),24),L=t<=h&&(d==1||d==3&&N>=h||d==2&&N<=h)?h:-Ue,G=Si(l,N>L&&t<=L?L:Wn(L,N));return b==G&&b==0&&(G=100),[b,G]}var X0=new Intl.NumberFormat(Cr?k0.language:"en-US"),Bh=i=>X0.format(i),si=Math,Ca=si.PI,gn=si.abs,ii=si.floor,mn=si.round,pi=si.ceil,Si=si.min,Wn=si.max,Er=si.pow,mf=si.sign,Qi=si.log10,Hf=si.log2,q0=(i,t=1)=>si.sinh(i)*t,yh=(i,t=1)=>si.asinh(i/t),Ue=1/0;function gf(i){return(Qi((i^i>>31)-(i>>31))|0)+1}function Ah(i,t,e){return Si(Wn(i,t),e)}function Wf(i){return typeof i=="function"}function xe(i){return Wf(i)?i:()=>i}var $0=()=>{},Xf=i=>i,qf=(i,t)=>t,Y0=i=>null,_f=i=>!0,xf=(i,t)=>i==t,Z0=/\.\d*?(?=9{6,}|0{6,})/gm,Ys=i=>{if(Zf(i)||bs.has(i))return i;let t=`${i}`,e=t.match(Z0);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${Ys(s)}e${r}`}return Fe(i,n)};function Ws(i,t){return Ys(Fe(Ys(i/t))*t)}function Ua(i,t){return Ys(pi(Ys(i/t))*t)}function $f(i,t){return Ys(ii(Ys(i/t))*t)}function Fe(i,t=0){if(Zf(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return mn(n)/e}var bs=new Map;function Yf(i){return((""+i).split(".")[1]||"").length}function Ao(i,t,e,n){let s=[],r=n.map(Yf);for(let o=t;o<e;o++){let a=gn(o),l=Fe(Er(i,o),a);for(let c=0;c<n.length;c++){let h=i==10?+`${n[c]}e${o}`:n[c]*l,u=(o>=0?0:a)+(o>=r[c]?0:r[c]),d=i==10?h:Fe(h,u);s.push(d),bs.set(d,u)}}return s}var To={},kh=[],Tr=[null,null],Ss=Array.isArray,Zf=Number.isInteger,J0=i=>i===void 0;function yf(i){return typeof i=="string"}function Fa(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function j0(i){return i!=null&&typeof i=="object"}var K0=Object.getPrototypeOf(Uint8Array),Jf="__proto__";function Ar(i,t=Fa){let e;if(Ss(i)){let n=i.find(s=>s!=null);if(Ss(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=Ar(i[s],t)}else e=i.slice()}else if(i instanceof K0)e=i.slice();else if(t(i)){e={};for(let n in i)n!=Jf&&(e[n]=Ar(i[n],t))}else e=i;return e}function un(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=Jf&&(Fa(i[s])?un(i[s],Ar(n[s])):i[s]=Ar(n[s]))}return i}var Q0=0,t_=1,e_=2;function n_(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function i_(i,t){if(o_(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return a_(o[0])||(o=r_(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let l=i[o][0],c=l.length;for(let h=0;h<c;h++)e.add(l[h])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],l=a[0];for(let c=1;c<a.length;c++){let h=a[c],u=Array(s).fill(void 0),d=t?t[o][c]:t_,f=[];for(let g=0;g<h.length;g++){let _=h[g],p=r.get(l[g]);_===null?d!=Q0&&(u[p]=_,d==e_&&f.push(p)):u[p]=_}n_(u,f,s),n.push(u)}}return n}var s_=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function r_(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let l=0;l<e;l++)a[l]=o[n[l]];s.push(a)}return s}function o_(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function a_(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=Wn(1,ii((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let l=i[a];if(l!=null){if(l<=o)return!1;o=l}}return!0}var jf=["January","February","March","April","May","June","July","August","September","October","November","December"],Kf=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function Qf(i){return i.slice(0,3)}var l_=Kf.map(Qf),c_=jf.map(Qf),h_={MMMM:jf,MMM:c_,WWWW:Kf,WWW:l_};function Mo(i){return(i<10?"0":"")+i}function u_(i){return(i<10?"00":i<100?"0":"")+i}var d_={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>Mo(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>Mo(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>Mo(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>Mo(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>Mo(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>u_(i.getMilliseconds())};function zh(i,t){t=t||h_;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?d_[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var f_=new Intl.DateTimeFormat().resolvedOptions().timeZone;function p_(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==f_?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var tp=i=>i%1==0,La=[1,2,2.5,5],m_=Ao(10,-32,0,La),ep=Ao(10,0,32,La),g_=ep.filter(tp),Xs=m_.concat(ep),Vh=`
`,np="{YYYY}",vf=Vh+np,ip="{M}/{D}",wo=Vh+ip,Aa=wo+"/{YY}",sp="{aa}",__="{h}:{mm}",br=__+sp,Mf=Vh+br,Sf=":{ss}",Ae=null;function rp(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,l=(i==1?Ao(10,0,3,La).filter(tp):Ao(10,-3,0,La)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),c=[[o,np,Ae,Ae,Ae,Ae,Ae,Ae,1],[s*28,"{MMM}",vf,Ae,Ae,Ae,Ae,Ae,1],[s,ip,vf,Ae,Ae,Ae,Ae,Ae,1],[n,"{h}"+sp,Aa,Ae,wo,Ae,Ae,Ae,1],[e,br,Aa,Ae,wo,Ae,Ae,Ae,1],[t,Sf,Aa+" "+br,Ae,wo+" "+br,Ae,Mf,Ae,1],[i,Sf+".{fff}",Aa+" "+br,Ae,wo+" "+br,Ae,Mf,Ae,1]];function h(u){return(d,f,g,_,p,m)=>{let v=[],A=p>=o,M=p>=r&&p<o,R=u(g),w=Fe(R*i,3),x=vh(R.getFullYear(),A?0:R.getMonth(),M||A?1:R.getDate()),b=Fe(x*i,3);if(M||A){let k=M?p/r:0,N=A?p/o:0,L=w==b?w:Fe(vh(x.getFullYear()+N,x.getMonth()+k,1)*i,3),G=new Date(mn(L/i)),U=G.getFullYear(),C=G.getMonth();for(let B=0;L<=_;B++){let X=vh(U+N*B,C+k*B,1),z=X-u(Fe(X*i,3));L=Fe((+X+z)*i,3),L<=_&&v.push(L)}}else{let k=p>=s?s:p,N=ii(g)-ii(w),L=b+N+Ua(w-b,k);v.push(L);let G=u(L),U=G.getHours()+G.getMinutes()/e+G.getSeconds()/n,C=p/n,B=d.axes[f]._space,X=m/B;for(;L=Fe(L+p,i==1?0:3),!(L>_);)if(C>1){let z=ii(Fe(U+C,6))%24,j=u(L).getHours()-z;j>1&&(j=-1),L-=j*n,U=(U+C)%24;let tt=v[v.length-1];Fe((L-tt)/p,3)*X>=.7&&v.push(L)}else v.push(L)}return v}}return[l,c,h]}var[x_,y_,v_]=rp(1),[M_,S_,b_]=rp(.001);Ao(2,-53,53,[1]);function bf(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function wf(i,t){return(e,n,s,r,o)=>{let a=t.find(g=>o>=g[0])||t[t.length-1],l,c,h,u,d,f;return n.map(g=>{let _=i(g),p=_.getFullYear(),m=_.getMonth(),v=_.getDate(),A=_.getHours(),M=_.getMinutes(),R=_.getSeconds(),w=p!=l&&a[2]||m!=c&&a[3]||v!=h&&a[4]||A!=u&&a[5]||M!=d&&a[6]||R!=f&&a[7]||a[1];return l=p,c=m,h=v,u=A,d=M,f=R,w(_)})}}function w_(i,t){let e=zh(t);return(n,s,r,o,a)=>s.map(l=>e(i(l)))}function vh(i,t,e){return new Date(i,t,e)}function Ef(i,t){return t(i)}var E_="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function Tf(i,t){return(e,n,s,r)=>r==null?Nh:t(i(n))}function T_(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function A_(i,t){return i.series[t].fill(i,t)}var R_={show:!0,live:!0,isolate:!1,mount:$0,markers:{show:!0,width:2,stroke:T_,fill:A_,dash:"solid"},idx:null,idxs:null,values:[]};function C_(i,t){let e=i.cursor.points,n=fi(),s=e.size(i,t);Ge(n,So,s),Ge(n,bo,s);let r=s/-2;Ge(n,"marginLeft",r),Ge(n,"marginTop",r);let o=e.width(i,t,s);return o&&Ge(n,"borderWidth",o),n}function P_(i,t){let e=i.series[t].points;return e._fill||e._stroke}function I_(i,t){let e=i.series[t].points;return e._stroke||e._fill}function L_(i,t){return i.series[t].points.size}var Mh=[0,0];function D_(i,t,e){return Mh[0]=t,Mh[1]=e,Mh}function Ra(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function Sh(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var N_={show:!0,x:!0,y:!0,lock:!1,move:D_,points:{one:!1,show:C_,size:L_,width:0,stroke:I_,fill:P_},bind:{mousedown:Ra,mouseup:Ra,click:Ra,dblclick:Ra,mousemove:Sh,mouseleave:Sh,mouseenter:Sh},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},op={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},Gh=un({},op,{filter:qf}),ap=un({},Gh,{size:10}),lp=un({},op,{show:!1}),Hh='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',cp="bold "+Hh,hp=1.5,Af={show:!0,scale:"x",stroke:Dh,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:cp,side:2,grid:Gh,ticks:ap,border:lp,font:Hh,lineGap:hp,rotate:0},U_="Value",F_="Time",Rf={show:!0,scale:"x",auto:!1,sorted:1,min:Ue,max:-Ue,idxs:[]};function O_(i,t,e,n,s){return t.map(r=>r==null?"":Bh(r))}function B_(i,t,e,n,s,r,o){let a=[],l=bs.get(s)||0;e=o?e:Fe(Ua(e,s),l);for(let c=e;c<=n;c=Fe(c+s,l))a.push(Object.is(c,-0)?0:c);return a}function Rh(i,t,e,n,s,r,o){let a=[],l=i.scales[i.axes[t].scale].log,c=l==10?Qi:Hf,h=ii(c(e));s=Er(l,h),l==10&&(s=Xs[Mi(s,Xs)]);let u=e,d=s*l;l==10&&(d=Xs[Mi(d,Xs)]);do a.push(u),u=u+s,l==10&&!bs.has(u)&&(u=Fe(u,bs.get(s))),u>=d&&(s=u,d=s*l,l==10&&(d=Xs[Mi(d,Xs)]));while(u<=n);return a}function k_(i,t,e,n,s,r,o){let l=i.scales[i.axes[t].scale].asinh,c=n>l?Rh(i,t,Wn(l,e),n,s):[l],h=n>=0&&e<=0?[0]:[];return(e<-l?Rh(i,t,Wn(l,-n),-e,s):[l]).reverse().map(d=>-d).concat(h,c)}var up=/./,z_=/[12357]/,V_=/[125]/,Cf=/1/,Ch=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function G_(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],l=i.valToPos,c=r._space,h=l(10,o),u=l(9,o)-h>=c?up:l(7,o)-h>=c?z_:l(5,o)-h>=c?V_:Cf;if(u==Cf){let d=gn(l(1,o)-h);if(d<c)return Ch(t.slice().reverse(),a.distr,u,pi(c/d)).reverse()}return Ch(t,a.distr,u,1)}function H_(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,l=i.valToPos,c=gn(l(1,o)-l(2,o));return c<a?Ch(t.slice().reverse(),3,up,pi(a/c)).reverse():t}function W_(i,t,e,n){return n==null?Nh:t==null?"":Bh(t)}var Pf={show:!0,scale:"y",stroke:Dh,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:cp,side:3,grid:Gh,ticks:ap,border:lp,font:Hh,lineGap:hp,rotate:0};function X_(i,t){let e=3+(i||1)*2;return Fe(e*t,3)}function q_(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=gn(o-r),l=i.series[t],c=a/(l.points.space*Ee);return n[1]-n[0]<=c}var If={scale:null,auto:!0,sorted:0,min:Ue,max:-Ue},dp=(i,t,e,n,s)=>s,Lf={show:!0,auto:!0,sorted:0,gaps:dp,alpha:1,facets:[un({},If,{scale:"x"}),un({},If,{scale:"y"})]},Df={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:dp,alpha:1,points:{show:q_,filter:null},values:null,min:Ue,max:-Ue,idxs:[],path:null,clip:null};function $_(i,t,e,n,s){return e/10}var fp={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},Y_=un({},fp,{time:!1,ori:1}),Nf={};function pp(i,t){let e=Nf[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,l,c){for(let h=0;h<e.plots.length;h++)e.plots[h]!=s&&e.plots[h].pub(n,s,r,o,a,l,c)}},i!=null&&(Nf[i]=e)),e}var Rr=1,Ph=2;function Zs(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,l=r[0],c=n==2?r[1]:r[t],h=n==2?o[s.facets[0].scale]:o[i.series[0].scale],u=n==2?o[s.facets[1].scale]:o[s.scale],d=a.left,f=a.top,g=a.width,_=a.height,p=i.valToPosH,m=i.valToPosV;return h.ori==0?e(s,l,c,h,u,p,m,d,f,g,_,Ba,Pr,za,gp,xp):e(s,l,c,h,u,m,p,f,d,_,g,ka,Ir,qh,_p,yp)}function Wh(i,t){let e=0,n=0,s=be(i.bands,kh);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function Z_(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,l=i.scales[a];return s==-1?l.min:s==1?l.max:l.distr==3?l.dir==1?l.min:l.max:0}function ts(i,t,e,n,s,r){return Zs(i,t,(o,a,l,c,h,u,d,f,g,_,p)=>{let m=o.pxRound,v=c.dir*(c.ori==0?1:-1),A=c.ori==0?Pr:Ir,M,R;v==1?(M=e,R=n):(M=n,R=e);let w=m(u(a[M],c,_,f)),x=m(d(l[M],h,p,g)),b=m(u(a[R],c,_,f)),k=m(d(r==1?h.max:h.min,h,p,g)),N=new Path2D(s);return A(N,b,k),A(N,w,k),A(N,w,x),N})}function Oa(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?za:qh,l=e;for(let u=0;u<i.length;u++){let d=i[u];if(d[1]>d[0]){let f=d[0]-l;f>0&&a(o,l,n,f,n+r),l=d[1]}}let c=e+s-l,h=10;c>0&&a(o,l,n-h/2,c,n+r+h)}return o}function J_(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function Xh(i,t,e,n,s,r,o){let a=[],l=i.length;for(let c=s==1?e:n;c>=e&&c<=n;c+=s)if(t[c]===null){let u=c,d=c;if(s==1)for(;++c<=n&&t[c]===null;)d=c;else for(;--c>=e&&t[c]===null;)d=c;let f=r(i[u]),g=d==u?f:r(i[d]),_=u-s;f=o<=0&&_>=0&&_<l?r(i[_]):f;let m=d+s;g=o>=0&&m>=0&&m<l?r(i[m]):g,g>=f&&a.push([f,g])}return a}function Uf(i){return i==0?Xf:i==1?mn:t=>Ws(t,i)}function mp(i){let t=i==0?Ba:ka,e=i==0?(s,r,o,a,l,c)=>{s.arcTo(r,o,a,l,c)}:(s,r,o,a,l,c)=>{s.arcTo(o,r,l,a,c)},n=i==0?(s,r,o,a,l)=>{s.rect(r,o,a,l)}:(s,r,o,a,l)=>{s.rect(o,r,l,a)};return(s,r,o,a,l,c=0,h=0)=>{c==0&&h==0?n(s,r,o,a,l):(c=Si(c,a/2,l/2),h=Si(h,a/2,l/2),t(s,r+c,o),e(s,r+a,o,r+a,o+l,c),e(s,r+a,o+l,r,o+l,h),e(s,r,o+l,r,o,h),e(s,r,o,r+a,o,c),s.closePath())}}var Ba=(i,t,e)=>{i.moveTo(t,e)},ka=(i,t,e)=>{i.moveTo(e,t)},Pr=(i,t,e)=>{i.lineTo(t,e)},Ir=(i,t,e)=>{i.lineTo(e,t)},za=mp(0),qh=mp(1),gp=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},_p=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},xp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},yp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function vp(i){return(t,e,n,s,r)=>Zs(t,e,(o,a,l,c,h,u,d,f,g,_,p)=>{let{pxRound:m,points:v}=o,A,M;c.ori==0?(A=Ba,M=gp):(A=ka,M=_p);let R=Fe(v.width*Ee,3),w=(v.size-v.width)/2*Ee,x=Fe(w*2,3),b=new Path2D,k=new Path2D,{left:N,top:L,width:G,height:U}=t.bbox;za(k,N-x,L-x,G+x*2,U+x*2);let C=B=>{if(l[B]!=null){let X=m(u(a[B],c,_,f)),z=m(d(l[B],h,p,g));A(b,X+w,z),M(b,X,z,w,0,Ca*2)}};if(r)r.forEach(C);else for(let B=n;B<=s;B++)C(B);return{stroke:R>0?b:null,fill:b,clip:k,flags:Rr|Ph}})}function Mp(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var j_=Mp(Pr),K_=Mp(Ir);function Sp(i){let t=be(i?.alignGaps,0);return(e,n,s,r)=>Zs(e,n,(o,a,l,c,h,u,d,f,g,_,p)=>{[s,r]=Da(l,s,r);let m=o.pxRound,v=U=>m(u(U,c,_,f)),A=U=>m(d(U,h,p,g)),M,R;c.ori==0?(M=Pr,R=j_):(M=Ir,R=K_);let w=c.dir*(c.ori==0?1:-1),x={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Rr},b=x.stroke,k=!1;if(r-s>=_*4){let U=ht=>e.posToVal(ht,c.key,!0),C=null,B=null,X,z,ot,$=v(a[w==1?s:r]),j=v(a[s]),tt=v(a[r]),pt=U(w==1?j+1:tt-1);for(let ht=w==1?s:r;ht>=s&&ht<=r;ht+=w){let K=a[ht],lt=(w==1?K<pt:K>pt)?$:v(K),ft=l[ht];lt==$?ft!=null?(z=ft,C==null?(M(b,lt,A(z)),X=C=B=z):z<C?C=z:z>B&&(B=z)):ft===null&&(k=!0):(C!=null&&R(b,$,A(C),A(B),A(X),A(z)),ft!=null?(z=ft,M(b,lt,A(z)),C=B=X=z):(C=B=null,ft===null&&(k=!0)),$=lt,pt=U($+w))}C!=null&&C!=B&&ot!=$&&R(b,$,A(C),A(B),A(X),A(z))}else for(let U=w==1?s:r;U>=s&&U<=r;U+=w){let C=l[U];C===null?k=!0:C!=null&&M(b,v(a[U]),A(C))}let[L,G]=Wh(e,n);if(o.fill!=null||L!=0){let U=x.fill=new Path2D(b),C=o.fillTo(e,n,o.min,o.max,L),B=A(C),X=v(a[s]),z=v(a[r]);w==-1&&([z,X]=[X,z]),M(U,z,B),M(U,X,B)}if(!o.spanGaps){let U=[];k&&U.push(...Xh(a,l,s,r,w,v,t)),x.gaps=U=o.gaps(e,n,s,r,U),x.clip=Oa(U,c.ori,f,g,_,p)}return G!=0&&(x.band=G==2?[ts(e,n,s,r,b,-1),ts(e,n,s,r,b,1)]:ts(e,n,s,r,b,G)),x})}function Q_(i){let t=be(i.align,1),e=be(i.ascDesc,!1),n=be(i.alignGaps,0),s=be(i.extend,!1);return(r,o,a,l)=>Zs(r,o,(c,h,u,d,f,g,_,p,m,v,A)=>{[a,l]=Da(u,a,l);let M=c.pxRound,{left:R,width:w}=r.bbox,x=j=>M(g(j,d,v,p)),b=j=>M(_(j,f,A,m)),k=d.ori==0?Pr:Ir,N={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Rr},L=N.stroke,G=d.dir*(d.ori==0?1:-1),U=b(u[G==1?a:l]),C=x(h[G==1?a:l]),B=C,X=C;s&&t==-1&&(X=R,k(L,X,U)),k(L,C,U);for(let j=G==1?a:l;j>=a&&j<=l;j+=G){let tt=u[j];if(tt==null)continue;let pt=x(h[j]),ht=b(tt);t==1?k(L,pt,U):k(L,B,ht),k(L,pt,ht),U=ht,B=pt}let z=B;s&&t==1&&(z=R+w,k(L,z,U));let[ot,$]=Wh(r,o);if(c.fill!=null||ot!=0){let j=N.fill=new Path2D(L),tt=c.fillTo(r,o,c.min,c.max,ot),pt=b(tt);k(j,z,pt),k(j,X,pt)}if(!c.spanGaps){let j=[];j.push(...Xh(h,u,a,l,G,x,n));let tt=c.width*Ee/2,pt=e||t==1?tt:-tt,ht=e||t==-1?-tt:tt;j.forEach(K=>{K[0]+=pt,K[1]+=ht}),N.gaps=j=c.gaps(r,o,a,l,j),N.clip=Oa(j,d.ori,p,m,v,A)}return $!=0&&(N.band=$==2?[ts(r,o,a,l,L,-1),ts(r,o,a,l,L,1)]:ts(r,o,a,l,L,$)),N})}function Ff(i,t,e,n,s,r,o=Ue){if(i.length>1){let a=null;for(let l=0,c=1/0;l<i.length;l++)if(t[l]!==void 0){if(a!=null){let h=gn(i[l]-i[a]);h<c&&(c=h,o=gn(e(i[l],n,s,r)-e(i[a],n,s,r)))}a=l}}return o}function tx(i){i=i||To;let t=be(i.size,[.6,Ue,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=xe(s),o=1-t[0],a=be(t[1],Ue),l=be(t[2],1),c=be(i.disp,To),h=be(i.each,f=>{}),{fill:u,stroke:d}=c;return(f,g,_,p)=>Zs(f,g,(m,v,A,M,R,w,x,b,k,N,L)=>{let G=m.pxRound,U=e,C=n*Ee,B=a*Ee,X=l*Ee,z,ot;M.ori==0?[z,ot]=r(f,g):[ot,z]=r(f,g);let $=M.dir*(M.ori==0?1:-1),j=M.ori==0?za:qh,tt=M.ori==0?h:(Pt,Zt,oe,Et,Ne,Gt,$t)=>{h(Pt,Zt,oe,Ne,Et,$t,Gt)},pt=be(f.bands,kh).find(Pt=>Pt.series[0]==g),ht=pt!=null?pt.dir:0,K=m.fillTo(f,g,m.min,m.max,ht),mt=G(x(K,R,L,k)),lt,ft,_t,Ht=N,jt=G(m.width*Ee),Vt=!1,de=null,ce=null,se=null,Xe=null;u!=null&&(jt==0||d!=null)&&(Vt=!0,de=u.values(f,g,_,p),ce=new Map,new Set(de).forEach(Pt=>{Pt!=null&&ce.set(Pt,new Path2D)}),jt>0&&(se=d.values(f,g,_,p),Xe=new Map,new Set(se).forEach(Pt=>{Pt!=null&&Xe.set(Pt,new Path2D)})));let{x0:Oe,size:sn}=c;if(Oe!=null&&sn!=null){U=1,v=Oe.values(f,g,_,p),Oe.unit==2&&(v=v.map(oe=>f.posToVal(b+oe*N,M.key,!0)));let Pt=sn.values(f,g,_,p);sn.unit==2?ft=Pt[0]*N:ft=w(Pt[0],M,N,b)-w(0,M,N,b),Ht=Ff(v,A,w,M,N,b,Ht),_t=Ht-ft+C}else Ht=Ff(v,A,w,M,N,b,Ht),_t=Ht*o+C,ft=Ht-_t;_t<1&&(_t=0),jt>=ft/2&&(jt=0),_t<5&&(G=Xf);let Le=_t>0,vn=Ht-_t-(Le?jt:0);ft=G(Ah(vn,X,B)),lt=(U==0?ft/2:U==$?0:ft)-U*$*((U==0?C/2:0)+(Le?jt/2:0));let ve={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},fn=Vt?null:new Path2D,Ze=null;if(pt!=null)Ze=f.data[pt.series[1]];else{let{y0:Pt,y1:Zt}=c;Pt!=null&&Zt!=null&&(A=Zt.values(f,g,_,p),Ze=Pt.values(f,g,_,p))}let rn=z*ft,O=ot*ft;for(let Pt=$==1?_:p;Pt>=_&&Pt<=p;Pt+=$){let Zt=A[Pt];if(Zt==null)continue;if(Ze!=null){let q=Ze[Pt]??0;if(Zt-q==0)continue;mt=x(q,R,L,k)}let oe=M.distr!=2||c!=null?v[Pt]:Pt,Et=w(oe,M,N,b),Ne=x(be(Zt,K),R,L,k),Gt=G(Et-lt),$t=G(Wn(Ne,mt)),P=G(Si(Ne,mt)),S=$t-P;if(Zt!=null){let q=Zt<0?O:rn,dt=Zt<0?rn:O;Vt?(jt>0&&se[Pt]!=null&&j(Xe.get(se[Pt]),Gt,P+ii(jt/2),ft,Wn(0,S-jt),q,dt),de[Pt]!=null&&j(ce.get(de[Pt]),Gt,P+ii(jt/2),ft,Wn(0,S-jt),q,dt)):j(fn,Gt,P+ii(jt/2),ft,Wn(0,S-jt),q,dt),tt(f,g,Pt,Gt-jt/2,P,ft+jt,S)}}return jt>0?ve.stroke=Vt?Xe:fn:Vt||(ve._fill=m.width==0?m._fill:m._stroke??m._fill,ve.width=0),ve.fill=Vt?ce:fn,ve})}function ex(i,t){let e=be(t?.alignGaps,0);return(n,s,r,o)=>Zs(n,s,(a,l,c,h,u,d,f,g,_,p,m)=>{[r,o]=Da(c,r,o);let v=a.pxRound,A=z=>v(d(z,h,p,g)),M=z=>v(f(z,u,m,_)),R,w,x;h.ori==0?(R=Ba,x=Pr,w=xp):(R=ka,x=Ir,w=yp);let b=h.dir*(h.ori==0?1:-1),k=A(l[b==1?r:o]),N=k,L=[],G=[];for(let z=b==1?r:o;z>=r&&z<=o;z+=b)if(c[z]!=null){let $=l[z],j=A($);L.push(N=j),G.push(M(c[z]))}let U={stroke:i(L,G,R,x,w,v),fill:null,clip:null,band:null,gaps:null,flags:Rr},C=U.stroke,[B,X]=Wh(n,s);if(a.fill!=null||B!=0){let z=U.fill=new Path2D(C),ot=a.fillTo(n,s,a.min,a.max,B),$=M(ot);x(z,N,$),x(z,k,$)}if(!a.spanGaps){let z=[];z.push(...Xh(l,c,r,o,b,A,e)),U.gaps=z=a.gaps(n,s,r,o,z),U.clip=Oa(z,h.ori,g,_,p,m)}return X!=0&&(U.band=X==2?[ts(n,s,r,o,C,-1),ts(n,s,r,o,C,1)]:ts(n,s,r,o,C,X)),U})}function nx(i){return ex(ix,i)}function ix(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let l=Array(o),c=Array(o-1),h=Array(o-1),u=Array(o-1);for(let d=0;d<o-1;d++)h[d]=t[d+1]-t[d],u[d]=i[d+1]-i[d],c[d]=h[d]/u[d];l[0]=c[0];for(let d=1;d<o-1;d++)c[d]===0||c[d-1]===0||c[d-1]>0!=c[d]>0?l[d]=0:(l[d]=3*(u[d-1]+u[d])/((2*u[d]+u[d-1])/c[d-1]+(u[d]+2*u[d-1])/c[d]),isFinite(l[d])||(l[d]=0));l[o-1]=c[o-2];for(let d=0;d<o-1;d++)s(a,i[d]+u[d]/3,t[d]+l[d]*u[d]/3,i[d+1]-u[d]/3,t[d+1]-l[d+1]*u[d]/3,i[d+1],t[d+1])}return a}var Ih=new Set;function Of(){for(let i of Ih)i.syncRect(!0)}Cr&&($s(O0,wr,Of),$s(B0,wr,Of,!0),$s(Pa,wr,()=>{En.pxRatio=Ee}));var sx=Sp(),rx=vp();function Bf(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>Lh(r,o,t,e))}function ox(i,t){return i.map((e,n)=>n==0?{}:un({},t,e))}function Lh(i,t,e,n){return un({},t==0?e:n,i)}function bp(i,t,e){return t==null?Tr:[t,e]}var ax=bp;function lx(i,t,e){return t==null?Tr:Ia(t,e,Oh,!0)}function wp(i,t,e,n){return t==null?Tr:Na(t,e,i.scales[n].log,!1)}var cx=wp;function Ep(i,t,e,n){return t==null?Tr:Fh(t,e,i.scales[n].log,!1)}var hx=Ep;function ux(i,t,e,n,s){let r=Wn(gf(i),gf(t)),o=t-i,a=Mi(s/n*o,e);do{let l=e[a],c=n*l/o;if(c>=s&&r+(l<5?bs.get(l):0)<=17)return[l,c]}while(++a<e.length);return[0,0]}function kf(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=mn((e=+s)*Ee))+"px"),[i,t,e]}function dx(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=Fe(t[2]*Ee,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function En(i,t,e){let n={mode:be(i.mode,1)},s=n.mode;function r(y,E,I,D){let H=E.valToPct(y);return D+I*(E.dir==-1?1-H:H)}function o(y,E,I,D){let H=E.valToPct(y);return D+I*(E.dir==-1?H:1-H)}function a(y,E,I,D){return E.ori==0?r(y,E,I,D):o(y,E,I,D)}n.valToPosH=r,n.valToPosV=o;let l=!1;n.status=0;let c=n.root=fi(y0);if(i.id!=null&&(c.id=i.id),ni(c,i.class),i.title){let y=fi(S0,c);y.textContent=i.title}let h=vi("canvas"),u=n.ctx=h.getContext("2d"),d=fi(b0,c);$s("click",d,y=>{y.target===g&&(ke!=mr||qe!=gr)&&Cn.click(n,y)},!0);let f=n.under=fi(w0,d);d.appendChild(h);let g=n.over=fi(E0,d);i=Ar(i);let _=+be(i.pxAlign,1),p=Uf(_);(i.plugins||[]).forEach(y=>{y.opts&&(i=y.opts(n,i)||i)});let m=i.ms||.001,v=n.series=s==1?Bf(i.series||[],Rf,Df,!1):ox(i.series||[null],Lf),A=n.axes=Bf(i.axes||[],Af,Pf,!0),M=n.scales={},R=n.bands=i.bands||[];R.forEach(y=>{y.fill=xe(y.fill||null),y.dir=be(y.dir,-1)});let w=s==2?v[1].facets[0].scale:v[0].scale,x={axes:ji,series:pe},b=(i.drawOrder||["axes","series"]).map(y=>x[y]);function k(y){let E=y.distr==3?I=>Qi(I>0?I:y.clamp(n,I,y.min,y.max,y.key)):y.distr==4?I=>yh(I,y.asinh):y.distr==100?I=>y.fwd(I):I=>I;return I=>{let D=E(I),{_min:H,_max:J}=y,ct=J-H;return(D-H)/ct}}function N(y){let E=M[y];if(E==null){let I=(i.scales||To)[y]||To;if(I.from!=null){N(I.from);let D=un({},M[I.from],I,{key:y});D.valToPct=k(D),M[y]=D}else{E=M[y]=un({},y==w?fp:Y_,I),E.key=y;let D=E.time,H=E.range,J=Ss(H);if((y!=w||s==2&&!D)&&(J&&(H[0]==null||H[1]==null)&&(H={min:H[0]==null?ff:{mode:1,hard:H[0],soft:H[0]},max:H[1]==null?ff:{mode:1,hard:H[1],soft:H[1]}},J=!1),!J&&Fa(H))){let ct=H;H=(gt,St,Nt)=>St==null?Tr:Ia(St,Nt,ct)}E.range=xe(H||(D?ax:y==w?E.distr==3?cx:E.distr==4?hx:bp:E.distr==3?wp:E.distr==4?Ep:lx)),E.auto=xe(J?!1:E.auto),E.clamp=xe(E.clamp||$_),E._min=E._max=null,E.valToPct=k(E)}}}N("x"),N("y"),s==1&&v.forEach(y=>{N(y.scale)}),A.forEach(y=>{N(y.scale)});for(let y in i.scales)N(y);let L=M[w],G=L.distr,U,C;L.ori==0?(ni(c,v0),U=r,C=o):(ni(c,M0),U=o,C=r);let B={};for(let y in M){let E=M[y];(E.min!=null||E.max!=null)&&(B[y]={min:E.min,max:E.max},E.min=E.max=null)}let X=i.tzDate||(y=>new Date(mn(y/m))),z=i.fmtDate||zh,ot=m==1?v_(X):b_(X),$=wf(X,bf(m==1?y_:S_,z)),j=Tf(X,Ef(E_,z)),tt=[],pt=n.legend=un({},R_,i.legend),ht=n.cursor=un({},N_,{drag:{y:s==2}},i.cursor),K=pt.show,mt=ht.show,lt=pt.markers;pt.idxs=tt,lt.width=xe(lt.width),lt.dash=xe(lt.dash),lt.stroke=xe(lt.stroke),lt.fill=xe(lt.fill);let ft,_t,Ht,jt=[],Vt=[],de,ce=!1,se={};if(pt.live){let y=v[1]?v[1].values:null;ce=y!=null,de=ce?y(n,1,0):{_:0};for(let E in de)se[E]=Nh}if(K)if(ft=vi("table",I0,c),Ht=vi("tbody",null,ft),pt.mount(n,ft),ce){_t=vi("thead",null,ft,Ht);let y=vi("tr",null,_t);vi("th",null,y);for(var Xe in de)vi("th",Qd,y).textContent=Xe}else ni(ft,D0),pt.live&&ni(ft,L0);let Oe={show:!0},sn={show:!1};function Le(y,E){if(E==0&&(ce||!pt.live||s==2))return Tr;let I=[],D=vi("tr",N0,Ht,Ht.childNodes[E]);ni(D,y.class),y.show||ni(D,qs);let H=vi("th",null,D);if(lt.show){let gt=fi(U0,H);if(E>0){let St=lt.width(n,E);St&&(gt.style.border=St+"px "+lt.dash(n,E)+" "+lt.stroke(n,E)),gt.style.background=lt.fill(n,E)}}let J=fi(Qd,H);y.label instanceof HTMLElement?J.appendChild(y.label):J.textContent=y.label,E>0&&(lt.show||(J.style.color=y.width>0?lt.stroke(n,E):lt.fill(n,E)),ve("click",H,gt=>{if(ht._lock)return;Kt(gt);let St=v.indexOf(y);if((gt.ctrlKey||gt.metaKey)!=pt.isolate){let Nt=v.some((Ut,Ot)=>Ot>0&&Ot!=St&&Ut.show);v.forEach((Ut,Ot)=>{Ot>0&&Fi(Ot,Nt?Ot==St?Oe:sn:Oe,!0,cn.setSeries)})}else Fi(St,{show:!y.show},!0,cn.setSeries)},!1),Qt&&ve(sf,H,gt=>{ht._lock||(Kt(gt),Fi(v.indexOf(y),xr,!0,cn.setSeries))},!1));for(var ct in de){let gt=vi("td",F0,D);gt.textContent="--",I.push(gt)}return[D,I]}let vn=new Map;function ve(y,E,I,D=!0){let H=vn.get(E)||{},J=ht.bind[y](n,E,I,D);J&&($s(y,E,H[y]=J),vn.set(E,H))}function fn(y,E,I){let D=vn.get(E)||{};for(let H in D)(y==null||H==y)&&(Th(H,E,D[H]),delete D[H]);y==null&&vn.delete(E)}let Ze=0,rn=0,O=0,Pt=0,Zt=0,oe=0,Et=Zt,Ne=oe,Gt=O,$t=Pt,P=0,S=0,q=0,dt=0;n.bbox={};let at=!1,vt=!1,Mt=!1,et=!1,it=!1,xt=!1;function F(y,E,I){(I||y!=n.width||E!=n.height)&&rt(y,E),he(!1),Mt=!0,vt=!0,Ln()}function rt(y,E){n.width=Ze=O=y,n.height=rn=Pt=E,Zt=oe=0,bt(),Wt();let I=n.bbox;P=I.left=Ws(Zt*Ee,.5),S=I.top=Ws(oe*Ee,.5),q=I.width=Ws(O*Ee,.5),dt=I.height=Ws(Pt*Ee,.5)}let nt=3;function Tt(){let y=!1,E=0;for(;!y;){E++;let I=dr(E),D=Ui(E);y=E==nt||I&&D,y||(rt(n.width,n.height),vt=!0)}}function yt({width:y,height:E}){F(y,E)}n.setSize=yt;function bt(){let y=!1,E=!1,I=!1,D=!1;A.forEach((H,J)=>{if(H.show&&H._show){let{side:ct,_size:gt}=H,St=ct%2,Nt=H.label!=null?H.labelSize:0,Ut=gt+Nt;Ut>0&&(St?(O-=Ut,ct==3?(Zt+=Ut,D=!0):I=!0):(Pt-=Ut,ct==0?(oe+=Ut,y=!0):E=!0))}}),Di[0]=y,Di[1]=I,Di[2]=E,Di[3]=D,O-=_i[1]+_i[3],Zt+=_i[3],Pt-=_i[2]+_i[0],oe+=_i[0]}function Wt(){let y=Zt+O,E=oe+Pt,I=Zt,D=oe;function H(J,ct){switch(J){case 1:return y+=ct,y-ct;case 2:return E+=ct,E-ct;case 3:return I-=ct,I+ct;case 0:return D-=ct,D+ct}}A.forEach((J,ct)=>{if(J.show&&J._show){let gt=J.side;J._pos=H(gt,J._size),J.label!=null&&(J._lpos=H(gt,J.labelSize))}})}if(ht.dataIdx==null){let y=ht.hover,E=y.skip=new Set(y.skip??[]);E.add(void 0);let I=y.prox=xe(y.prox),D=y.bias??=0;ht.dataIdx=(H,J,ct,gt)=>{if(J==0)return ct;let St=ct,Nt=I(H,J,ct,gt)??Ue,Ut=Nt>=0&&Nt<Ue,Ot=L.ori==0?O:Pt,re=ht.left,we=t[0],Se=t[J];if(E.has(Se[ct])){St=null;let ge=null,Jt=null,Xt;if(D==0||D==-1)for(Xt=ct;ge==null&&Xt-- >0;)E.has(Se[Xt])||(ge=Xt);if(D==0||D==1)for(Xt=ct;Jt==null&&Xt++<Se.length;)E.has(Se[Xt])||(Jt=Xt);if(ge!=null||Jt!=null)if(Ut){let Ve=ge==null?-1/0:U(we[ge],L,Ot,0),Ke=Jt==null?1/0:U(we[Jt],L,Ot,0),wn=re-Ve,De=Ke-re;wn<=De?wn<=Nt&&(St=ge):De<=Nt&&(St=Jt)}else St=Jt==null?ge:ge==null?Jt:ct-ge<=Jt-ct?ge:Jt}else Ut&&gn(re-U(we[ct],L,Ot,0))>Nt&&(St=null);return St}}let Kt=y=>{ht.event=y};ht.idxs=tt,ht._lock=!1;let ut=ht.points;ut.show=xe(ut.show),ut.size=xe(ut.size),ut.stroke=xe(ut.stroke),ut.width=xe(ut.width),ut.fill=xe(ut.fill);let Bt=n.focus=un({},i.focus||{alpha:.3},ht.focus),Qt=Bt.prox>=0,Ct=Qt&&ut.one,le=[],Be=[],kn=[];function ho(y,E){let I=ut.show(n,E);if(I instanceof HTMLElement)return ni(I,P0),ni(I,y.class),zi(I,-10,-10,O,Pt),g.insertBefore(I,le[E]),I}function cr(y,E){if(s==1||E>0){let I=s==1&&M[y.scale].time,D=y.value;y.value=I?yf(D)?Tf(X,Ef(D,z)):D||j:D||W_,y.label=y.label||(I?F_:U_)}if(Ct||E>0){y.width=y.width==null?1:y.width,y.paths=y.paths||sx||Y0,y.fillTo=xe(y.fillTo||Z_),y.pxAlign=+be(y.pxAlign,_),y.pxRound=Uf(y.pxAlign),y.stroke=xe(y.stroke||null),y.fill=xe(y.fill||null),y._stroke=y._fill=y._paths=y._focus=null;let I=X_(Wn(1,y.width),1),D=y.points=un({},{size:I,width:Wn(1,I*.2),stroke:y.stroke,space:I*2,paths:rx,_stroke:null,_fill:null},y.points);D.show=xe(D.show),D.filter=xe(D.filter),D.fill=xe(D.fill),D.stroke=xe(D.stroke),D.paths=xe(D.paths),D.pxAlign=y.pxAlign}if(K){let I=Le(y,E);jt.splice(E,0,I[0]),Vt.splice(E,0,I[1]),pt.values.push(null)}if(mt){tt.splice(E,0,null);let I=null;Ct?E==0&&(I=ho(y,E)):E>0&&(I=ho(y,E)),le.splice(E,0,I),Be.splice(E,0,0),kn.splice(E,0,0)}bn("addSeries",E)}function sh(y,E){E=E??v.length,y=s==1?Lh(y,E,Rf,Df):Lh(y,E,{},Lf),v.splice(E,0,y),cr(v[E],E)}n.addSeries=sh;function ya(y){if(v.splice(y,1),K){pt.values.splice(y,1),Vt.splice(y,1);let E=jt.splice(y,1)[0];fn(null,E.firstChild),E.remove()}mt&&(tt.splice(y,1),le.splice(y,1)[0].remove(),Be.splice(y,1),kn.splice(y,1)),bn("delSeries",y)}n.delSeries=ya;let Di=[!1,!1,!1,!1];function Yi(y,E){if(y._show=y.show,y.show){let I=y.side%2,D=M[y.scale];D==null&&(y.scale=I?v[1].scale:w,D=M[y.scale]);let H=D.time;y.size=xe(y.size),y.space=xe(y.space),y.rotate=xe(y.rotate),Ss(y.incrs)&&y.incrs.forEach(ct=>{!bs.has(ct)&&bs.set(ct,Yf(ct))}),y.incrs=xe(y.incrs||(D.distr==2?g_:H?m==1?x_:M_:Xs)),y.splits=xe(y.splits||(H&&D.distr==1?ot:D.distr==3?Rh:D.distr==4?k_:B_)),y.stroke=xe(y.stroke),y.grid.stroke=xe(y.grid.stroke),y.ticks.stroke=xe(y.ticks.stroke),y.border.stroke=xe(y.border.stroke);let J=y.values;y.values=Ss(J)&&!Ss(J[0])?xe(J):H?Ss(J)?wf(X,bf(J,z)):yf(J)?w_(X,J):J||$:J||O_,y.filter=xe(y.filter||(D.distr>=3&&D.log==10?G_:D.distr==3&&D.log==2?H_:qf)),y.font=kf(y.font),y.labelFont=kf(y.labelFont),y._size=y.size(n,null,E,0),y._space=y._rotate=y._incrs=y._found=y._splits=y._values=null,y._size>0&&(Di[E]=!0,y._el=fi(T0,d))}}function Zi(y,E,I,D){let[H,J,ct,gt]=I,St=E%2,Nt=0;return St==0&&(gt||J)&&(Nt=E==0&&!H||E==2&&!ct?mn(Af.size/3):0),St==1&&(H||ct)&&(Nt=E==1&&!J||E==3&&!gt?mn(Pf.size/2):0),Nt}let uo=n.padding=(i.padding||[Zi,Zi,Zi,Zi]).map(y=>xe(be(y,Zi))),_i=n._padding=uo.map((y,E)=>y(n,E,Di,0)),Je,tn=null,en=null,Ni=s==1?v[0].idxs:null,Kn=null,ms=!1;function fo(y,E){if(t=y??[],n.data=n._data=t,s==2){Je=0;for(let I=1;I<v.length;I++)Je+=t[I][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),Kn=t[0],Je=Kn.length;let I=t;if(G==2){I=t.slice();let D=I[0]=Array(Je);for(let H=0;H<Je;H++)D[H]=H}n._data=t=I}if(he(!0),bn("setData"),G==2&&(Mt=!0),E!==!1){let I=L;I.auto(n,ms)?po():xs(w,I.min,I.max),et=et||ht.left>=0,xt=!0,Ln()}}n.setData=fo;function po(){ms=!0;let y,E;s==1&&(Je>0?(tn=Ni[0]=0,en=Ni[1]=Je-1,y=t[0][tn],E=t[0][en],G==2?(y=tn,E=en):y==E&&(G==3?[y,E]=Na(y,y,L.log,!1):G==4?[y,E]=Fh(y,y,L.log,!1):L.time?E=y+mn(86400/m):[y,E]=Ia(y,E,Oh,!0))):(tn=Ni[0]=y=null,en=Ni[1]=E=null)),xs(w,y,E)}let hr,gs,ur,T,V,Q,Y,Z,At,It;function Rt(y,E,I,D,H,J){y??=ef,I??=kh,D??="butt",H??=ef,J??="round",y!=hr&&(u.strokeStyle=hr=y),H!=gs&&(u.fillStyle=gs=H),E!=ur&&(u.lineWidth=ur=E),J!=V&&(u.lineJoin=V=J),D!=Q&&(u.lineCap=Q=D),I!=T&&u.setLineDash(T=I)}function Lt(y,E,I,D){E!=gs&&(u.fillStyle=gs=E),y!=Y&&(u.font=Y=y),I!=Z&&(u.textAlign=Z=I),D!=At&&(u.textBaseline=At=D)}function zt(y,E,I,D,H=0){if(D.length>0&&y.auto(n,ms)&&(E==null||E.min==null)){let J=be(tn,0),ct=be(en,D.length-1),gt=I.min==null?G0(D,J,ct,H,y.distr==3):[I.min,I.max];y.min=Si(y.min,I.min=gt[0]),y.max=Wn(y.max,I.max=gt[1])}}let te={min:null,max:null};function fe(){for(let D in M){let H=M[D];B[D]==null&&(H.min==null||B[w]!=null&&H.auto(n,ms))&&(B[D]=te)}for(let D in M){let H=M[D];B[D]==null&&H.from!=null&&B[H.from]!=null&&(B[D]=te)}B[w]!=null&&he(!0);let y={};for(let D in B){let H=B[D];if(H!=null){let J=y[D]=Ar(M[D],j0);if(H.min!=null)un(J,H);else if(D!=w||s==2)if(Je==0&&J.from==null){let ct=J.range(n,null,null,D);J.min=ct[0],J.max=ct[1]}else J.min=Ue,J.max=-Ue}}if(Je>0){v.forEach((D,H)=>{if(s==1){let J=D.scale,ct=B[J];if(ct==null)return;let gt=y[J];if(H==0){let St=gt.range(n,gt.min,gt.max,J);gt.min=St[0],gt.max=St[1],tn=Mi(gt.min,t[0]),en=Mi(gt.max,t[0]),en-tn>1&&(t[0][tn]<gt.min&&tn++,t[0][en]>gt.max&&en--),D.min=Kn[tn],D.max=Kn[en]}else D.show&&D.auto&&zt(gt,ct,D,t[H],D.sorted);D.idxs[0]=tn,D.idxs[1]=en}else if(H>0&&D.show&&D.auto){let[J,ct]=D.facets,gt=J.scale,St=ct.scale,[Nt,Ut]=t[H],Ot=y[gt],re=y[St];Ot!=null&&zt(Ot,B[gt],J,Nt,J.sorted),re!=null&&zt(re,B[St],ct,Ut,ct.sorted),D.min=ct.min,D.max=ct.max}});for(let D in y){let H=y[D],J=B[D];if(H.from==null&&(J==null||J.min==null)){let ct=H.range(n,H.min==Ue?null:H.min,H.max==-Ue?null:H.max,D);H.min=ct[0],H.max=ct[1]}}}for(let D in y){let H=y[D];if(H.from!=null){let J=y[H.from];if(J.min==null)H.min=H.max=null;else{let ct=H.range(n,J.min,J.max,D);H.min=ct[0],H.max=ct[1]}}}let E={},I=!1;for(let D in y){let H=y[D],J=M[D];if(J.min!=H.min||J.max!=H.max){J.min=H.min,J.max=H.max;let ct=J.distr;J._min=ct==3?Qi(J.min):ct==4?yh(J.min,J.asinh):ct==100?J.fwd(J.min):J.min,J._max=ct==3?Qi(J.max):ct==4?yh(J.max,J.asinh):ct==100?J.fwd(J.max):J.max,E[D]=I=!0}}if(I){v.forEach((D,H)=>{s==2?H>0&&E.y&&(D._paths=null):E[D.scale]&&(D._paths=null)});for(let D in E)Mt=!0,bn("setScale",D);mt&&ht.left>=0&&(et=xt=!0)}for(let D in B)B[D]=null}function kt(y){let E=Ah(tn-1,0,Je-1),I=Ah(en+1,0,Je-1);for(;y[E]==null&&E>0;)E--;for(;y[I]==null&&I<Je-1;)I++;return[E,I]}function pe(){if(Je>0){let y=v.some(E=>E._focus)&&It!=Bt.alpha;y&&(u.globalAlpha=It=Bt.alpha),v.forEach((E,I)=>{if(I>0&&E.show&&(Ye(I,!1),Ye(I,!0),E._paths==null)){let D=It;It!=E.alpha&&(u.globalAlpha=It=E.alpha);let H=s==2?[0,t[I][0].length-1]:kt(t[I]);E._paths=E.paths(n,I,H[0],H[1]),It!=D&&(u.globalAlpha=It=D)}}),v.forEach((E,I)=>{if(I>0&&E.show){let D=It;It!=E.alpha&&(u.globalAlpha=It=E.alpha),E._paths!=null&&Ce(I,!1);{let H=E._paths!=null?E._paths.gaps:null,J=E.points.show(n,I,tn,en,H),ct=E.points.filter(n,I,J,H);(J||ct)&&(E.points._paths=E.points.paths(n,I,tn,en,ct),Ce(I,!0))}It!=D&&(u.globalAlpha=It=D),bn("drawSeries",I)}}),y&&(u.globalAlpha=It=1)}}function Ye(y,E){let I=E?v[y].points:v[y];I._stroke=I.stroke(n,y),I._fill=I.fill(n,y)}function Ce(y,E){let I=E?v[y].points:v[y],{stroke:D,fill:H,clip:J,flags:ct,_stroke:gt=I._stroke,_fill:St=I._fill,_width:Nt=I.width}=I._paths;Nt=Fe(Nt*Ee,3);let Ut=null,Ot=Nt%2/2;E&&St==null&&(St=Nt>0?"#fff":gt);let re=I.pxAlign==1&&Ot>0;if(re&&u.translate(Ot,Ot),!E){let we=P-Nt/2,Se=S-Nt/2,ge=q+Nt,Jt=dt+Nt;Ut=new Path2D,Ut.rect(we,Se,ge,Jt)}E?Ft(gt,Nt,I.dash,I.cap,St,D,H,ct,J):Pe(y,gt,Nt,I.dash,I.cap,St,D,H,ct,Ut,J),re&&u.translate(-Ot,-Ot)}function Pe(y,E,I,D,H,J,ct,gt,St,Nt,Ut){let Ot=!1;St!=0&&R.forEach((re,we)=>{if(re.series[0]==y){let Se=v[re.series[1]],ge=t[re.series[1]],Jt=(Se._paths||To).band;Ss(Jt)&&(Jt=re.dir==1?Jt[0]:Jt[1]);let Xt,Ve=null;Se.show&&Jt&&W0(ge,tn,en)?(Ve=re.fill(n,we)||J,Xt=Se._paths.clip):Jt=null,Ft(E,I,D,H,Ve,ct,gt,St,Nt,Ut,Xt,Jt),Ot=!0}}),Ot||Ft(E,I,D,H,J,ct,gt,St,Nt,Ut)}let pn=Rr|Ph;function Ft(y,E,I,D,H,J,ct,gt,St,Nt,Ut,Ot){Rt(y,E,I,D,H),(St||Nt||Ot)&&(u.save(),St&&u.clip(St),Nt&&u.clip(Nt)),Ot?(gt&pn)==pn?(u.clip(Ot),Ut&&u.clip(Ut),_e(H,ct),on(y,J,E)):gt&Ph?(_e(H,ct),u.clip(Ot),on(y,J,E)):gt&Rr&&(u.save(),u.clip(Ot),Ut&&u.clip(Ut),_e(H,ct),u.restore(),on(y,J,E)):(_e(H,ct),on(y,J,E)),(St||Nt||Ot)&&u.restore()}function on(y,E,I){I>0&&(E instanceof Map?E.forEach((D,H)=>{u.strokeStyle=hr=H,u.stroke(D)}):E!=null&&y&&u.stroke(E))}function _e(y,E){E instanceof Map?E.forEach((I,D)=>{u.fillStyle=gs=D,u.fill(I)}):E!=null&&y&&u.fill(E)}function Ji(y,E,I,D){let H=A[y],J;if(D<=0)J=[0,0];else{let ct=H._space=H.space(n,y,E,I,D),gt=H._incrs=H.incrs(n,y,E,I,D,ct);J=ux(E,I,gt,D,ct)}return H._found=J}function an(y,E,I,D,H,J,ct,gt,St,Nt){let Ut=ct%2/2;_==1&&u.translate(Ut,Ut),Rt(gt,ct,St,Nt,gt),u.beginPath();let Ot,re,we,Se,ge=H+(D==0||D==3?-J:J);I==0?(re=H,Se=ge):(Ot=H,we=ge);for(let Jt=0;Jt<y.length;Jt++)E[Jt]!=null&&(I==0?Ot=we=y[Jt]:re=Se=y[Jt],u.moveTo(Ot,re),u.lineTo(we,Se));u.stroke(),_==1&&u.translate(-Ut,-Ut)}function dr(y){let E=!0;return A.forEach((I,D)=>{if(!I.show)return;let H=M[I.scale];if(H.min==null){I._show&&(E=!1,I._show=!1,he(!1));return}else I._show||(E=!1,I._show=!0,he(!1));let J=I.side,ct=J%2,{min:gt,max:St}=H,[Nt,Ut]=Ji(D,gt,St,ct==0?O:Pt);if(Ut==0)return;let Ot=H.distr==2,re=I._splits=I.splits(n,D,gt,St,Nt,Ut,Ot),we=H.distr==2?re.map(Xt=>Kn[Xt]):re,Se=H.distr==2?Kn[re[1]]-Kn[re[0]]:Nt,ge=I._values=I.values(n,I.filter(n,we,D,Ut,Se),D,Ut,Se);I._rotate=J==2?I.rotate(n,ge,D,Ut):0;let Jt=I._size;I._size=pi(I.size(n,ge,D,y)),Jt!=null&&I._size!=Jt&&(E=!1)}),E}function Ui(y){let E=!0;return uo.forEach((I,D)=>{let H=I(n,D,Di,y);H!=_i[D]&&(E=!1),_i[D]=H}),E}function ji(){for(let y=0;y<A.length;y++){let E=A[y];if(!E.show||!E._show)continue;let I=E.side,D=I%2,H,J,ct=E.stroke(n,y),gt=I==0||I==3?-1:1,[St,Nt]=E._found;if(E.label!=null){let Gn=E.labelGap*gt,ei=mn((E._lpos+Gn)*Ee);Lt(E.labelFont[0],ct,"center",I==2?"top":tf),u.save(),D==1?(H=J=0,u.translate(ei,mn(S+dt/2)),u.rotate((I==3?-Ca:Ca)/2)):(H=mn(P+q/2),J=ei);let Hs=Wf(E.label)?E.label(n,y,St,Nt):E.label;u.fillText(Hs,H,J),u.restore()}if(Nt==0)continue;let Ut=M[E.scale],Ot=D==0?q:dt,re=D==0?P:S,we=E._splits,Se=Ut.distr==2?we.map(Gn=>Kn[Gn]):we,ge=Ut.distr==2?Kn[we[1]]-Kn[we[0]]:St,Jt=E.ticks,Xt=E.border,Ve=Jt.show?Jt.size:0,Ke=mn(Ve*Ee),wn=mn((E.alignTo==2?E._size-Ve-E.gap:E.gap)*Ee),De=E._rotate*-Ca/180,Qe=p(E._pos*Ee),Qn=(Ke+wn)*gt,Vn=Qe+Qn;J=D==0?Vn:0,H=D==1?Vn:0;let ui=E.font[0],xi=E.align==1?Sr:E.align==2?gh:De>0?Sr:De<0?gh:D==0?"center":I==3?gh:Sr,Bi=De||D==1?"middle":I==2?"top":tf;Lt(ui,ct,xi,Bi);let ti=E.font[1]*E.lineGap,di=we.map(Gn=>p(a(Gn,Ut,Ot,re))),yi=E._values;for(let Gn=0;Gn<yi.length;Gn++){let ei=yi[Gn];if(ei!=null){D==0?H=di[Gn]:J=di[Gn],ei=""+ei;let Hs=ei.indexOf(`
`)==-1?[ei]:ei.split(/\n/gm);for(let Hn=0;Hn<Hs.length;Hn++){let $d=Hs[Hn];De?(u.save(),u.translate(H,J+Hn*ti),u.rotate(De),u.fillText($d,0,0),u.restore()):u.fillText($d,H,J+Hn*ti)}}}Jt.show&&an(di,Jt.filter(n,Se,y,Nt,ge),D,I,Qe,Ke,Fe(Jt.width*Ee,3),Jt.stroke(n,y),Jt.dash,Jt.cap);let ki=E.grid;ki.show&&an(di,ki.filter(n,Se,y,Nt,ge),D,D==0?2:1,D==0?S:P,D==0?dt:q,Fe(ki.width*Ee,3),ki.stroke(n,y),ki.dash,ki.cap),Xt.show&&an([Qe],[1],D==0?1:0,D==0?1:2,D==1?S:P,D==1?dt:q,Fe(Xt.width*Ee,3),Xt.stroke(n,y),Xt.dash,Xt.cap)}bn("drawAxes")}function he(y){v.forEach((E,I)=>{I>0&&(E._paths=null,y&&(s==1?(E.min=null,E.max=null):E.facets.forEach(D=>{D.min=null,D.max=null})))})}let je=!1,zn=!1,Ie=[];function ln(){zn=!1;for(let y=0;y<Ie.length;y++)bn(...Ie[y]);Ie.length=0}function Ln(){je||(s_(Cd),je=!0)}function va(y,E=!1){je=!0,zn=E,y(n),Cd(),E&&Ie.length>0&&queueMicrotask(ln)}n.batch=va;function Cd(){if(at&&(fe(),at=!1),Mt&&(Tt(),Mt=!1),vt){if(Ge(f,Sr,Zt),Ge(f,"top",oe),Ge(f,So,O),Ge(f,bo,Pt),Ge(g,Sr,Zt),Ge(g,"top",oe),Ge(g,So,O),Ge(g,bo,Pt),Ge(d,So,Ze),Ge(d,bo,rn),h.width=mn(Ze*Ee),h.height=mn(rn*Ee),A.forEach(({_el:y,_show:E,_size:I,_pos:D,side:H})=>{if(y!=null)if(E){let J=H===3||H===0?I:0,ct=H%2==1;Ge(y,ct?"left":"top",D-J),Ge(y,ct?"width":"height",I),Ge(y,ct?"top":"left",ct?oe:Zt),Ge(y,ct?"height":"width",ct?Pt:O),Eh(y,qs)}else ni(y,qs)}),hr=gs=ur=V=Q=Y=Z=At=T=null,It=1,_o(!0),Zt!=Et||oe!=Ne||O!=Gt||Pt!=$t){he(!1);let y=O/Gt,E=Pt/$t;if(mt&&!et&&ht.left>=0){ht.left*=y,ht.top*=E,fr&&zi(fr,mn(ht.left),0,O,Pt),pr&&zi(pr,0,mn(ht.top),O,Pt);for(let I=0;I<le.length;I++){let D=le[I];D!=null&&(Be[I]*=y,kn[I]*=E,zi(D,pi(Be[I]),pi(kn[I]),O,Pt))}}if(ze.show&&!it&&ze.left>=0&&ze.width>0){ze.left*=y,ze.width*=y,ze.top*=E,ze.height*=E;for(let I in hh)Ge(_r,I,ze[I])}Et=Zt,Ne=oe,Gt=O,$t=Pt}bn("setSize"),vt=!1}Ze>0&&rn>0&&(u.clearRect(0,0,h.width,h.height),bn("drawClear"),b.forEach(y=>y()),bn("draw")),ze.show&&it&&(Ma(ze),it=!1),mt&&et&&(Gs(null,!0,!1),et=!1),pt.show&&pt.live&&xt&&(lh(),xt=!1),l||(l=!0,n.status=1,bn("ready")),ms=!1,je=!1}n.redraw=(y,E)=>{Mt=E||!1,y!==!1?xs(w,L.min,L.max):Ln()};function rh(y,E){let I=M[y];if(I.from==null){if(Je==0){let D=I.range(n,E.min,E.max,y);E.min=D[0],E.max=D[1]}if(E.min>E.max){let D=E.min;E.min=E.max,E.max=D}if(Je>1&&E.min!=null&&E.max!=null&&E.max-E.min<1e-16)return;y==w&&I.distr==2&&Je>0&&(E.min=Mi(E.min,t[0]),E.max=Mi(E.max,t[0]),E.min==E.max&&E.max++),B[y]=E,at=!0,Ln()}}n.setScale=rh;let oh,ah,fr,pr,Pd,Id,mr,gr,Ld,Dd,ke,qe,_s=!1,Cn=ht.drag,Mn=Cn.x,Sn=Cn.y;mt&&(ht.x&&(oh=fi(R0,g)),ht.y&&(ah=fi(C0,g)),L.ori==0?(fr=oh,pr=ah):(fr=ah,pr=oh),ke=ht.left,qe=ht.top);let ze=n.select=un({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),_r=ze.show?fi(A0,ze.over?g:f):null;function Ma(y,E){if(ze.show){for(let I in y)ze[I]=y[I],I in hh&&Ge(_r,I,y[I]);E!==!1&&bn("setSelect")}}n.setSelect=Ma;function i0(y){if(v[y].show)K&&Eh(jt[y],qs);else if(K&&ni(jt[y],qs),mt){let I=Ct?le[0]:le[y];I!=null&&zi(I,-10,-10,O,Pt)}}function xs(y,E,I){rh(y,{min:E,max:I})}function Fi(y,E,I,D){E.focus!=null&&l0(y),E.show!=null&&v.forEach((H,J)=>{J>0&&(y==J||y==null)&&(H.show=E.show,i0(J),s==2?(xs(H.facets[0].scale,null,null),xs(H.facets[1].scale,null,null)):xs(H.scale,null,null),Ln())}),I!==!1&&bn("setSeries",y,E),D&&xo("setSeries",n,y,E)}n.setSeries=Fi;function s0(y,E){un(R[y],E)}function r0(y,E){y.fill=xe(y.fill||null),y.dir=be(y.dir,-1),E=E??R.length,R.splice(E,0,y)}function o0(y){y==null?R.length=0:R.splice(y,1)}n.addBand=r0,n.setBand=s0,n.delBand=o0;function a0(y,E){v[y].alpha=E,mt&&le[y]!=null&&(le[y].style.opacity=E),K&&jt[y]&&(jt[y].style.opacity=E)}let Ki,ys,Vs,xr={focus:!0};function l0(y){if(y!=Vs){let E=y==null,I=Bt.alpha!=1;v.forEach((D,H)=>{if(s==1||H>0){let J=E||H==0||H==y;D._focus=E?null:J,I&&a0(H,J?1:Bt.alpha)}}),Vs=y,I&&Ln()}}K&&Qt&&ve(rf,ft,y=>{ht._lock||(Kt(y),Vs!=null&&Fi(null,xr,!0,cn.setSeries))});function Oi(y,E,I){let D=M[E];I&&(y=y/Ee-(D.ori==1?oe:Zt));let H=O;D.ori==1&&(H=Pt,y=H-y),D.dir==-1&&(y=H-y);let J=D._min,ct=D._max,gt=y/H,St=J+(ct-J)*gt,Nt=D.distr;return Nt==3?Er(10,St):Nt==4?q0(St,D.asinh):Nt==100?D.bwd(St):St}function c0(y,E){let I=Oi(y,w,E);return Mi(I,t[0],tn,en)}n.valToIdx=y=>Mi(y,t[0]),n.posToIdx=c0,n.posToVal=Oi,n.valToPos=(y,E,I)=>M[E].ori==0?r(y,M[E],I?q:O,I?P:0):o(y,M[E],I?dt:Pt,I?S:0),n.setCursor=(y,E,I)=>{ke=y.left,qe=y.top,Gs(null,E,I)};function Nd(y,E){Ge(_r,Sr,ze.left=y),Ge(_r,So,ze.width=E)}function Ud(y,E){Ge(_r,"top",ze.top=y),Ge(_r,bo,ze.height=E)}let mo=L.ori==0?Nd:Ud,go=L.ori==1?Nd:Ud;function h0(){if(K&&pt.live)for(let y=s==2?1:0;y<v.length;y++){if(y==0&&ce)continue;let E=pt.values[y],I=0;for(let D in E)Vt[y][I++].firstChild.nodeValue=E[D]}}function lh(y,E){if(y!=null&&(y.idxs?y.idxs.forEach((I,D)=>{tt[D]=I}):J0(y.idx)||tt.fill(y.idx),pt.idx=tt[0]),K&&pt.live){for(let I=0;I<v.length;I++)(I>0||s==1&&!ce)&&u0(I,tt[I]);h0()}xt=!1,E!==!1&&bn("setLegend")}n.setLegend=lh;function u0(y,E){let I=v[y],D=y==0&&G==2?Kn:t[y],H;ce?H=I.values(n,y,E)??se:(H=I.value(n,E==null?null:D[E],y,E),H=H==null?se:{_:H}),pt.values[y]=H}function Gs(y,E,I){Ld=ke,Dd=qe,[ke,qe]=ht.move(n,ke,qe),ht.left=ke,ht.top=qe,mt&&(fr&&zi(fr,mn(ke),0,O,Pt),pr&&zi(pr,0,mn(qe),O,Pt));let D,H=tn>en;Ki=Ue,ys=null;let J=L.ori==0?O:Pt,ct=L.ori==1?O:Pt;if(ke<0||Je==0||H){D=ht.idx=null;for(let gt=0;gt<v.length;gt++){let St=le[gt];St!=null&&zi(St,-10,-10,O,Pt)}Qt&&Fi(null,xr,!0,y==null&&cn.setSeries),pt.live&&(tt.fill(D),xt=!0)}else{let gt,St,Nt;s==1&&(gt=L.ori==0?ke:qe,St=Oi(gt,w),D=ht.idx=Mi(St,t[0],tn,en),Nt=U(t[0][D],L,J,0));let Ut=-10,Ot=-10,re=0,we=0,Se=!0,ge="",Jt="";for(let Xt=s==2?1:0;Xt<v.length;Xt++){let Ve=v[Xt],Ke=tt[Xt],wn=Ke==null?null:s==1?t[Xt][Ke]:t[Xt][1][Ke],De=ht.dataIdx(n,Xt,D,St),Qe=De==null?null:s==1?t[Xt][De]:t[Xt][1][De];if(xt=xt||Qe!=wn||De!=Ke,tt[Xt]=De,Xt>0&&Ve.show){let Qn=De==null?-10:De==D?Nt:U(s==1?t[0][De]:t[Xt][0][De],L,J,0),Vn=Qe==null?-10:C(Qe,s==1?M[Ve.scale]:M[Ve.facets[1].scale],ct,0);if(Qt&&Qe!=null){let ui=L.ori==1?ke:qe,xi=gn(Bt.dist(n,Xt,De,Vn,ui));if(xi<Ki){let Bi=Bt.bias;if(Bi!=0){let ti=Oi(ui,Ve.scale),di=Qe>=0?1:-1,yi=ti>=0?1:-1;yi==di&&(yi==1?Bi==1?Qe>=ti:Qe<=ti:Bi==1?Qe<=ti:Qe>=ti)&&(Ki=xi,ys=Xt)}else Ki=xi,ys=Xt}}if(xt||Ct){let ui,xi;L.ori==0?(ui=Qn,xi=Vn):(ui=Vn,xi=Qn);let Bi,ti,di,yi,ki,Gn,ei=!0,Hs=ut.bbox;if(Hs!=null){ei=!1;let Hn=Hs(n,Xt);di=Hn.left,yi=Hn.top,Bi=Hn.width,ti=Hn.height}else di=ui,yi=xi,Bi=ti=ut.size(n,Xt);if(Gn=ut.fill(n,Xt),ki=ut.stroke(n,Xt),Ct)Xt==ys&&Ki<=Bt.prox&&(Ut=di,Ot=yi,re=Bi,we=ti,Se=ei,ge=Gn,Jt=ki);else{let Hn=le[Xt];Hn!=null&&(Be[Xt]=di,kn[Xt]=yi,df(Hn,Bi,ti,ei),hf(Hn,Gn,ki),zi(Hn,pi(di),pi(yi),O,Pt))}}}}if(Ct){let Xt=Bt.prox,Ve=Vs==null?Ki<=Xt:Ki>Xt||ys!=Vs;if(xt||Ve){let Ke=le[0];Ke!=null&&(Be[0]=Ut,kn[0]=Ot,df(Ke,re,we,Se),hf(Ke,ge,Jt),zi(Ke,pi(Ut),pi(Ot),O,Pt))}}}if(ze.show&&_s)if(y!=null){let[gt,St]=cn.scales,[Nt,Ut]=cn.match,[Ot,re]=y.cursor.sync.scales,we=y.cursor.drag;if(Mn=we._x,Sn=we._y,Mn||Sn){let{left:Se,top:ge,width:Jt,height:Xt}=y.select,Ve=y.scales[Ot].ori,Ke=y.posToVal,wn,De,Qe,Qn,Vn,ui=gt!=null&&Nt(gt,Ot),xi=St!=null&&Ut(St,re);ui&&Mn?(Ve==0?(wn=Se,De=Jt):(wn=ge,De=Xt),Qe=M[gt],Qn=U(Ke(wn,Ot),Qe,J,0),Vn=U(Ke(wn+De,Ot),Qe,J,0),mo(Si(Qn,Vn),gn(Vn-Qn))):mo(0,J),xi&&Sn?(Ve==1?(wn=Se,De=Jt):(wn=ge,De=Xt),Qe=M[St],Qn=C(Ke(wn,re),Qe,ct,0),Vn=C(Ke(wn+De,re),Qe,ct,0),go(Si(Qn,Vn),gn(Vn-Qn))):go(0,ct)}else uh()}else{let gt=gn(Ld-Pd),St=gn(Dd-Id);if(L.ori==1){let re=gt;gt=St,St=re}Mn=Cn.x&&gt>=Cn.dist,Sn=Cn.y&&St>=Cn.dist;let Nt=Cn.uni;Nt!=null?Mn&&Sn&&(Mn=gt>=Nt,Sn=St>=Nt,!Mn&&!Sn&&(St>gt?Sn=!0:Mn=!0)):Cn.x&&Cn.y&&(Mn||Sn)&&(Mn=Sn=!0);let Ut,Ot;Mn&&(L.ori==0?(Ut=mr,Ot=ke):(Ut=gr,Ot=qe),mo(Si(Ut,Ot),gn(Ot-Ut)),Sn||go(0,ct)),Sn&&(L.ori==1?(Ut=mr,Ot=ke):(Ut=gr,Ot=qe),go(Si(Ut,Ot),gn(Ot-Ut)),Mn||mo(0,J)),!Mn&&!Sn&&(mo(0,0),go(0,0))}if(Cn._x=Mn,Cn._y=Sn,y==null){if(I){if(qd!=null){let[gt,St]=cn.scales;cn.values[0]=gt!=null?Oi(L.ori==0?ke:qe,gt):null,cn.values[1]=St!=null?Oi(L.ori==1?ke:qe,St):null}xo(_h,n,ke,qe,O,Pt,D)}if(Qt){let gt=I&&cn.setSeries,St=Bt.prox;Vs==null?Ki<=St&&Fi(ys,xr,!0,gt):Ki>St?Fi(null,xr,!0,gt):ys!=Vs&&Fi(ys,xr,!0,gt)}}xt&&(pt.idx=D,lh()),E!==!1&&bn("setCursor")}let vs=null;Object.defineProperty(n,"rect",{get(){return vs==null&&_o(!1),vs}});function _o(y=!1){y?vs=null:(vs=g.getBoundingClientRect(),bn("syncRect",vs))}function Fd(y,E,I,D,H,J,ct){ht._lock||_s&&y!=null&&y.movementX==0&&y.movementY==0||(ch(y,E,I,D,H,J,ct,!1,y!=null),y!=null?Gs(null,!0,!0):Gs(E,!0,!1))}function ch(y,E,I,D,H,J,ct,gt,St){if(vs==null&&_o(!1),Kt(y),y!=null)I=y.clientX-vs.left,D=y.clientY-vs.top;else{if(I<0||D<0){ke=-10,qe=-10;return}let[Nt,Ut]=cn.scales,Ot=E.cursor.sync,[re,we]=Ot.values,[Se,ge]=Ot.scales,[Jt,Xt]=cn.match,Ve=E.axes[0].side%2==1,Ke=L.ori==0?O:Pt,wn=L.ori==1?O:Pt,De=Ve?J:H,Qe=Ve?H:J,Qn=Ve?D:I,Vn=Ve?I:D;if(Se!=null?I=Jt(Nt,Se)?a(re,M[Nt],Ke,0):-10:I=Ke*(Qn/De),ge!=null?D=Xt(Ut,ge)?a(we,M[Ut],wn,0):-10:D=wn*(Vn/Qe),L.ori==1){let ui=I;I=D,D=ui}}St&&(E==null||E.cursor.event.type==_h)&&((I<=1||I>=O-1)&&(I=Ws(I,O)),(D<=1||D>=Pt-1)&&(D=Ws(D,Pt))),gt?(Pd=I,Id=D,[mr,gr]=ht.move(n,I,D)):(ke=I,qe=D)}let hh={width:0,height:0,left:0,top:0};function uh(){Ma(hh,!1)}let Od,Bd,kd,zd;function Vd(y,E,I,D,H,J,ct){_s=!0,Mn=Sn=Cn._x=Cn._y=!1,ch(y,E,I,D,H,J,ct,!0,!1),y!=null&&(ve(xh,bh,Gd,!1),xo(nf,n,mr,gr,O,Pt,null));let{left:gt,top:St,width:Nt,height:Ut}=ze;Od=gt,Bd=St,kd=Nt,zd=Ut}function Gd(y,E,I,D,H,J,ct){_s=Cn._x=Cn._y=!1,ch(y,E,I,D,H,J,ct,!1,!0);let{left:gt,top:St,width:Nt,height:Ut}=ze,Ot=Nt>0||Ut>0,re=Od!=gt||Bd!=St||kd!=Nt||zd!=Ut;if(Ot&&re&&Ma(ze),Cn.setScale&&Ot&&re){let we=gt,Se=Nt,ge=St,Jt=Ut;if(L.ori==1&&(we=St,Se=Ut,ge=gt,Jt=Nt),Mn&&xs(w,Oi(we,w),Oi(we+Se,w)),Sn)for(let Xt in M){let Ve=M[Xt];Xt!=w&&Ve.from==null&&Ve.min!=Ue&&xs(Xt,Oi(ge+Jt,Xt),Oi(ge,Xt))}uh()}else ht.lock&&(ht._lock=!ht._lock,Gs(E,!0,y!=null));y!=null&&(fn(xh,bh),xo(xh,n,ke,qe,O,Pt,null))}function d0(y,E,I,D,H,J,ct){if(ht._lock)return;Kt(y);let gt=_s;if(_s){let St=!0,Nt=!0,Ut=10,Ot,re;L.ori==0?(Ot=Mn,re=Sn):(Ot=Sn,re=Mn),Ot&&re&&(St=ke<=Ut||ke>=O-Ut,Nt=qe<=Ut||qe>=Pt-Ut),Ot&&St&&(ke=ke<mr?0:O),re&&Nt&&(qe=qe<gr?0:Pt),Gs(null,!0,!0),_s=!1}ke=-10,qe=-10,tt.fill(null),Gs(null,!0,!0),gt&&(_s=gt)}function Hd(y,E,I,D,H,J,ct){ht._lock||(Kt(y),po(),uh(),y!=null&&xo(of,n,ke,qe,O,Pt,null))}function Wd(){A.forEach(dx),F(n.width,n.height,!0)}$s(Pa,wr,Wd);let yr={};yr.mousedown=Vd,yr.mousemove=Fd,yr.mouseup=Gd,yr.dblclick=Hd,yr.setSeries=(y,E,I,D)=>{let H=cn.match[2];I=H(n,E,I),I!=-1&&Fi(I,D,!0,!1)},mt&&(ve(nf,g,Vd),ve(_h,g,Fd),ve(sf,g,y=>{Kt(y),_o(!1)}),ve(rf,g,d0),ve(of,g,Hd),Ih.add(n),n.syncRect=_o);let Sa=n.hooks=i.hooks||{};function bn(y,E,I){zn?Ie.push([y,E,I]):y in Sa&&Sa[y].forEach(D=>{D.call(null,n,E,I)})}(i.plugins||[]).forEach(y=>{for(let E in y.hooks)Sa[E]=(Sa[E]||[]).concat(y.hooks[E])});let Xd=(y,E,I)=>I,cn=un({key:null,setSeries:!1,filters:{pub:_f,sub:_f},scales:[w,v[1]?v[1].scale:null],match:[xf,xf,Xd],values:[null,null]},ht.sync);cn.match.length==2&&cn.match.push(Xd),ht.sync=cn;let qd=cn.key,dh=pp(qd);function xo(y,E,I,D,H,J,ct){cn.filters.pub(y,E,I,D,H,J,ct)&&dh.pub(y,E,I,D,H,J,ct)}dh.sub(n);function f0(y,E,I,D,H,J,ct){cn.filters.sub(y,E,I,D,H,J,ct)&&yr[y](null,E,I,D,H,J,ct)}n.pub=f0;function p0(){dh.unsub(n),Ih.delete(n),vn.clear(),Th(Pa,wr,Wd),c.remove(),ft?.remove(),bn("destroy")}n.destroy=p0;function fh(){bn("init",i,t),fo(t||i.data,!1),B[w]?rh(w,B[w]):po(),it=ze.show&&(ze.width>0||ze.height>0),et=xt=!0,F(i.width,i.height)}return v.forEach(cr),A.forEach(Yi),e?e instanceof HTMLElement?(e.appendChild(c),fh()):e(n,fh):fh(),n}En.assign=un;En.fmtNum=Bh;En.rangeNum=Ia;En.rangeLog=Na;En.rangeAsinh=Fh;En.orient=Zs;En.pxRatio=Ee;En.join=i_;En.fmtDate=zh,En.tzDate=p_;En.sync=pp;{En.addGap=J_,En.clipGaps=Oa;let i=En.paths={points:vp};i.linear=Sp,i.stepped=Q_,i.bars=tx,i.spline=nx}var ws=132,Va=24,Ga=class{constructor(t,e,n,s,r){this.judged=t;this.within=e;this.further=n;this.atlas=s;this.walk=r}judged;within;further;atlas;walk;charts=[];shownJoint=-1;build(){this.shownJoint=this.walk.place.joint;for(let o of this.charts)o.remove();nn(this.judged),nn(this.within),nn(this.further),this.charts=[];let t=[...new Set(this.walk.facts.bands.flatMap(o=>o.columns))].filter(o=>this.isThere(o)),e=new Set(this.atlas.payload.findings.filter(o=>o.joint===this.walk.joint.id).map(o=>o.rule)),n=t.filter(o=>this.walk.facts.bands.some(a=>e.has(a.rule)&&a.columns.includes(o))),s=Object.keys(this.atlas.payload.quantities).filter(o=>!t.includes(o)&&this.isThere(o));for(let[o,a]of[[this.judged,n],[this.within,t.filter(l=>!n.includes(l))],[this.further,s]])for(let l of a){let c=new $h(l,this.atlas,this.walk);this.charts.push(c),o.append(c.root),c.later()}let r=this.within.closest("details");r&&(r.hidden=n.length===t.length),t.length&&!n.length&&this.judged.append(qt("p",null,"Every judged quantity is within its limits everywhere.")),t.length||this.judged.append(qt("p",null,"No judged quantity was measured along this seam."))}isThere(t){return this.walk.joint.contours.some(e=>e.stations[t]?.some(n=>n!==null))}show(t){t.joint!==this.shownJoint&&this.build();for(let e of this.charts)e.show()}retheme(){for(let t of this.charts)t.redraw()}forPrint(t){for(let e of this.charts)this.further.contains(e.root)||e.forPrint(t)}forScreen(){for(let t of this.charts)t.forScreen()}},$h=class{constructor(t,e,n){this.column=t;this.atlas=e;this.walk=n;let s=n.facts.bands.filter(u=>u.columns.includes(t));this.edges=s.flatMap(u=>u.edges).filter(u=>u.judged===t);let r=new Set(s.map(u=>u.rule));this.findings=e.payload.findings.filter(u=>u.joint===n.joint.id&&(u.quantity===t||r.has(u.rule)&&!s.some(d=>d.columns.length>1)));let o=e.words,a=o.title(t),l=n.facts.tolerances[t],c=s.filter(u=>u.words).map(u=>`${u.title.toLowerCase()}: ${u.words}`),h=o.unit(t);this.root=qt("figure",{class:"chart","data-column":t},qt("figcaption",null,qt("span",{class:"chart-title"},a,h?` / ${h}`:""),this.here,qt("span",{class:"chart-limits"},[...c,...l?[`tolerance ±${l} ${h}`]:[]].join(" · "))),qt("div",{class:"chart-row"},this.plotHost,this.spread),this.summary())}column;atlas;walk;root;plotHost=qt("div",{class:"chart-plot"});spread=qt("div",{class:"chart-spread"});here=qt("b",{class:"chart-here"});cursor=qt("div",{class:"chart-cursor","aria-hidden":!0});plot=null;drawNow=()=>{};edges;findings;summary(){let t=this.walk.joint.contours.map(n=>{let s=n.summary[this.column],r=this.atlas.words,o=this.walk.joint.contours.length>1?`${n.id}: `:"";if(!s)return`${o}not measured`;let a=(l,c)=>c==null?"":`, ${l} ${r.value(c,this.column)}`;return`${o}least ${r.value(s.min,this.column)}${a("p05",s.p05)}, median ${r.value(s.median,this.column)}${a("p95",s.p95)}, most ${r.value(s.max,this.column)}`}),e=this.walk.joint.summary[this.column]?.outside;return e!==void 0&&t.push(`outside a limit: ${(100*e).toFixed(e>0&&e<.1?1:0)} % of the length`),qt("p",{class:"chart-summary"},t.join(" · "))}later(){this.drawNow=vo(this.root,()=>this.draw())}data(){let t=[],e=[],{stretches:n}=this.walk.stretches();for(let{contour:s,start:r}of n){let o=this.walk.joint.contours[s],a=o.stations[this.column];t.length&&(t.push(r-.001),e.push(null)),o.stations.s.forEach((l,c)=>{t.push(r+l),e.push(a?.[c]??null)}),o.closed&&a&&(t.push(r+o.length_mm),e.push(a[0]))}return[t,e]}range(t){let e=t.filter(c=>c!==null),[n,s]=[Math.min(...e),Math.max(...e)];for(let c of this.edges){let h=mx(c.low),u=Tp(c.high);h!==null&&(n=Math.min(n,h),s=Math.max(s,h)),u!==null&&u-s<2*Math.max(s-n,Math.abs(s)*.3)&&(s=Math.max(s,u),n=Math.min(n,u))}let r=this.edges.map(c=>Tp(c.low)).filter(c=>c!==null&&c>0);r.length&&this.edges.every(c=>c.high===null)&&(s=Math.min(s,Math.max(12*Math.max(...r),2*n)));let{tolerances:o}=this.walk.facts,a=o[this.column]??0;n-=a,s+=a;let l=Math.max((s-n)*.12,Math.abs(s)*.02,.01);return[n-l,s+l]}line(t,e){let{left:n,width:s}=t.bbox;if(e===null)return[];if(typeof e=="number"){let a=t.valToPos(e,"y",!0);return[[n,a],[n+s,a]]}let r=[],{stretches:o}=this.walk.stretches();for(let{contour:a,start:l}of o){let c=this.walk.joint.contours[a];e[c.id]?.forEach((h,u)=>{h!==null&&r.push([t.valToPos(l+c.stations.s[u],"x",!0),t.valToPos(h,"y",!0)])})}return r}draw(){let t=this.data(),[e,n]=this.range(t[1]),s=Math.max(200,this.plotHost.getBoundingClientRect().width||600),r=this.atlas.payload.quantities[this.column]?.decimals??3,o={width:s,height:ws,pxAlign:0,legend:{show:!1},cursor:{sync:{key:"seam"},drag:{x:!0,y:!1,setScale:!0},points:{show:!1},y:!1},scales:{x:{time:!1,range:(a,l,c)=>[l,c]},y:{range:()=>[e,n]}},padding:[8,14,0,0],axes:[{stroke:()=>hn("soft"),grid:{show:!1},ticks:{stroke:()=>hn("line"),size:4},size:22,font:Ap,gap:3},{stroke:()=>hn("soft"),grid:{stroke:()=>hn("line"),width:1},ticks:{show:!1},size:52,font:Ap,space:26,values:(a,l)=>fx(l,r)}],series:[{},{stroke:()=>hn("ink"),width:1.6,points:{show:!1},spanGaps:!1}],hooks:{drawAxes:[a=>{this.drawBands(a),this.drawTolerance(a,t)}],draw:[a=>{this.drawFindings(a),this.show()}],ready:[a=>this.listen(a)]}};this.plot=new En(o,t,this.plotHost),this.plot.over.append(this.cursor),this.drawSpread(t[1],e,n),this.show(),new ResizeObserver(()=>{let a=this.plotHost.getBoundingClientRect().width;this.plot&&a>50&&Math.abs(a-this.plot.width)>1&&!this.printing&&this.plot.setSize({width:a,height:ws})}).observe(this.plotHost)}printing=!1;listen(t){let e=0;t.over.addEventListener("mousedown",n=>{e=n.clientX}),t.over.addEventListener("click",n=>{if(Math.abs(n.clientX-e)>4)return;let s=t.posToVal(n.clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")}),t.over.addEventListener("touchmove",n=>{let s=t.posToVal(n.touches[0].clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")},{passive:!0})}drawBands(t){let{ctx:e}=t,{left:n,top:s,width:r,height:o}=t.bbox;e.save(),e.beginPath(),e.rect(n,s,r,o),e.clip();for(let a of this.edges)for(let[l,c]of[[a.low,!0],[a.high,!1]]){let h=this.line(t,l);if(h.length<2)continue;let u=c?s+o:s;e.save(),e.beginPath(),h.forEach(([f,g],_)=>_?e.lineTo(f,g):e.moveTo(f,g)),e.lineTo(h[h.length-1][0],u),e.lineTo(h[0][0],u),e.closePath(),e.clip(),e.globalAlpha=.5,e.fillStyle=hn("outside"),e.fillRect(n,s,r,o),e.globalAlpha=.55,e.strokeStyle=hn("outside-line"),e.lineWidth=devicePixelRatio*.7,e.beginPath();let d=7*devicePixelRatio;for(let f=n-o;f<n+r;f+=d)e.moveTo(f,s+o),e.lineTo(f+o,s);e.stroke(),e.restore(),e.strokeStyle=hn("limit"),e.lineWidth=1.3*devicePixelRatio,e.setLineDash([6*devicePixelRatio,3*devicePixelRatio]),e.beginPath(),h.forEach(([f,g],_)=>_?e.lineTo(f,g):e.moveTo(f,g)),e.stroke(),e.setLineDash([])}e.restore()}drawTolerance(t,[e,n]){let{tolerances:s}=this.walk.facts,r=s[this.column]??this.edges.map(a=>s[a.column]).find(a=>a!==void 0);if(!r)return;let{ctx:o}=t;o.save(),o.beginPath(),o.rect(t.bbox.left,t.bbox.top,t.bbox.width,t.bbox.height),o.clip(),o.globalAlpha=.22,o.fillStyle=hn("walker");for(let a=0;a<e.length;a++){if(n[a]===null)continue;let l=a;for(;l+1<e.length&&n[l+1]!==null;)l++;o.beginPath();for(let c=a;c<=l;c++)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]+r,"y",!0));for(let c=l;c>=a;c--)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]-r,"y",!0));o.closePath(),o.fill(),a=l}o.restore()}drawFindings(t){let{ctx:e}=t,{top:n,height:s}=t.bbox,{stretches:r}=this.walk.stretches(),o=devicePixelRatio;e.save(),e.font=`600 ${11*o}px ${Rp}`;let a=[];for(let l of this.findings){let c=this.walk.joint.contours.findIndex(d=>d.id===l.contour);if(c<0||l.from_s===null||l.to_s===null||l.severity==="note")continue;let h=r[c].start,u=l.from_s<=l.to_s?[[l.from_s,l.to_s]]:[[l.from_s,this.walk.joint.contours[c].length_mm],[0,l.to_s]];for(let[d,f]of u){let g=t.valToPos(h+d,"x",!0),_=Math.max(t.valToPos(h+f,"x",!0),g+3*o);if(_<t.bbox.left||g>t.bbox.left+t.bbox.width)continue;e.fillStyle=hn(l.waived?"waived":l.severity==="must-fix"?"broken":"near"),e.fillRect(g,n+s-4*o,_-g,4*o);let p=(g+_)/2,m=a.find(v=>Math.abs(v.x-p)<14*o);m?m.findings.push(l):a.push({x:p,findings:[l],colour:String(e.fillStyle)})}}e.textAlign="center";for(let{x:l,findings:c,colour:h}of a)e.fillStyle=h,e.fillText(Ms(c),l,n+11*o);e.restore()}drawSpread(t,e,n){nn(this.spread);let s=new Array(Va).fill(0);for(let c of t)c!==null&&s[Math.min(Va-1,Math.max(0,Math.floor((c-e)/(n-e)*Va)))]++;let r=Math.max(1,...s),o=ws-30,a=o/Va,l=wt("svg",{viewBox:`0 0 74 ${ws}`,width:74,height:ws,role:"img","aria-label":"Distribution of the values"});s.forEach((c,h)=>{c&&l.append(wt("rect",{class:"bin",x:4,y:st(8+o-(h+1)*a),width:st(Math.max(2,60*Math.sqrt(c/r))),height:st(a-.7)}))});for(let c of this.edges)for(let h of[c.low,c.high]){if(typeof h!="number"||h<e||h>n)continue;let u=8+o*(1-(h-e)/(n-e));l.append(wt("line",{class:"bin-limit",x1:0,x2:74,y1:st(u),y2:st(u)}))}l.append(wt("text",{class:"side",x:4,y:ws-8},"spread √n")),this.spread.append(l)}show(){let{contour:t,place:e}=this.walk,n=t.stations[this.column]?.[e.station]??null;if(this.here.textContent=this.atlas.words.value(n,this.column),this.here.dataset.value=String(n),!this.plot)return;let s=this.plot.valToPos(this.walk.unrolled,"x"),r=s>=-1&&s<=this.plot.bbox.width/En.pxRatio+1;this.cursor.hidden=!r,this.cursor.style.transform=`translateX(${st(s)}px)`,this.cursor.dataset.s=this.walk.unrolled.toFixed(4)}redraw(){this.plot?.redraw(!1,!0)}forPrint(t){this.drawNow(),this.printing=!0,this.plot?.setSize({width:t,height:ws})}forScreen(){this.printing&&(this.printing=!1,this.plot?.setSize({width:Math.max(200,this.plotHost.getBoundingClientRect().width),height:ws}))}remove(){this.plot?.destroy()}};function fx(i,t){let e=px(i,t),n=i.map(s=>(Math.abs(s)<.5*10**-e?0:s).toFixed(e));return n.map((s,r)=>i.some((o,a)=>n[a]===s&&Math.abs(o-Number(s))<Math.abs(i[r]-Number(s))-1e-12)?"":s)}function px(i,t){for(let e=0;e<t;e++)if(i.every(n=>Math.abs(Number(n.toFixed(e))-n)<1e-9))return e;return t}var Ha=i=>i===null?[]:typeof i=="number"?[i]:Object.values(i).flat().filter(t=>t!==null),mx=i=>Ha(i).length?Math.min(...Ha(i)):null,Tp=i=>Ha(i).length?Math.max(...Ha(i)):null,Rp='"Barlow Semi Condensed", "Arial Narrow", sans-serif',Ap=`500 12px ${Rp}`;var Wa=(i,t)=>i[0]*t[0]+i[1]*t[1]+i[2]*t[2],gx=(i,t)=>[i[1]*t[2]-i[2]*t[1],i[2]*t[0]-i[0]*t[2],i[0]*t[1]-i[1]*t[0]],Cp=i=>{let t=Math.hypot(...i);return[i[0]/t,i[1]/t,i[2]/t]};function Js(i){let t=Cp([-i[0],-i[1],-i[2]]),e=[[1,0,0],[0,1,0],[0,0,1]],n=e.find(o=>Math.abs(Wa(o,t))<.8)??e[1],s=Wa(n,t),r=Cp([n[0]-s*t[0],n[1]-s*t[1],n[2]-s*t[2]]);return{right:r,up:gx(t,r),toward:t}}var Lr=(i,t)=>[Wa(i.right,t),Wa(i.up,t)];function Pp(i,t,e,n,s,r,o){let a=new Float32Array(e*n).fill(-1/0),l=new Int32Array(e*n).fill(-1),c=new Float32Array(e*n*3),{right:h,up:u,toward:d}=t,f=0;for(let g of i){let{positions:_,triangles:p}=g,m=_.length/3,v=new Float32Array(m),A=new Float32Array(m),M=new Float32Array(m);for(let R=0;R<m;R++){let[w,x,b]=[_[3*R],_[3*R+1],_[3*R+2]];v[R]=(h[0]*w+h[1]*x+h[2]*b-r)*s,A[R]=(o-(u[0]*w+u[1]*x+u[2]*b))*s,M[R]=d[0]*w+d[1]*x+d[2]*b}for(let R=0;R<p.length;R+=3){let[w,x,b]=[p[R],p[R+1],p[R+2]],k=(v[x]-v[w])*(A[b]-A[w])-(A[x]-A[w])*(v[b]-v[w]);if(Math.abs(k)<1e-9)continue;let N=-((M[x]-M[w])*(A[b]-A[w])-(M[b]-M[w])*(A[x]-A[w]))/k,L=-((M[b]-M[w])*(v[x]-v[w])-(M[x]-M[w])*(v[b]-v[w]))/k,G=Math.max(0,Math.ceil(Math.min(v[w],v[x],v[b])-.5)),U=Math.min(e-1,Math.floor(Math.max(v[w],v[x],v[b])-.5)),C=Math.max(0,Math.ceil(Math.min(A[w],A[x],A[b])-.5)),B=Math.min(n-1,Math.floor(Math.max(A[w],A[x],A[b])-.5)),X=Math.hypot(N/s,L/s,1/s/s)||1,z=[N*s,-L*s,1],ot=Math.hypot(z[0],z[1],z[2])||X,$=f+(g.face.length?g.face[R/3]:0);for(let j=C;j<=B;j++)for(let tt=G;tt<=U;tt++){let pt=((tt+.5-v[w])*(A[b]-A[w])-(j+.5-A[w])*(v[b]-v[w]))/k,ht=((j+.5-A[w])*(v[x]-v[w])-(tt+.5-v[w])*(A[x]-A[w]))/k;if(pt<-1e-6||ht<-1e-6||pt+ht>1+1e-6)continue;let K=M[w]+pt*(M[x]-M[w])+ht*(M[b]-M[w]),mt=j*e+tt;K<=a[mt]||(a[mt]=K,l[mt]=$,c[3*mt]=z[0]/ot,c[3*mt+1]=z[1]/ot,c[3*mt+2]=z[2]/ot)}}f+=1e6}return{width:e,height:n,depth:a,face:l,normal:c}}function Ip(i,t,e,n,s,r){let{width:o,height:a,depth:l,face:c,normal:h}=t,u=i.data,d=(p,m,v)=>{for(let A=0;A<3;A++)u[4*p+A]+=(m[A]-u[4*p+A])*v},[f,g]=[1/0,-1/0];for(let p of l)p>-1/0&&(p<f&&(f=p),p>g&&(g=p));let _=Math.max(1e-6,g-f);for(let p=0;p<o*a;p++){if(c[p]<0)continue;let m=-.5*h[3*p]+.5*h[3*p+1],v=.12*(1-(l[p]-f)/_)+Math.max(0,-m)*.3+(1-h[3*p+2])*.1;d(p,e,s),d(p,n,Math.min(.5,v)*s)}for(let p=0;p<a-1;p++)for(let m=0;m<o-1;m++){let v=p*o+m,A=0;for(let M of[v+1,v+o]){if(c[v]===c[M])continue;if(c[v]<0||c[M]<0){A=1;continue}h[3*v]*h[3*M]+h[3*v+1]*h[3*M+1]+h[3*v+2]*h[3*M+2]<.97&&(A=Math.max(A,.6)),Math.abs(l[v]-l[M])>.15&&(A=Math.max(A,.85))}A&&d(v,n,A*r)}}var Xa=["unknown","within","near","broken","waived","look","noted"];var qa=class{constructor(t){this.payload=t}payload;place={joint:0,contour:0,station:0};listeners=[];get joint(){return this.payload.joints[this.place.joint]}get facts(){return this.payload.facts[this.place.joint]}get contour(){return this.joint.contours[this.place.contour]}get s(){return this.contour.stations.s[this.place.station]}listen(t){this.listeners.push(t)}go(t,e=""){let n=t.joint??this.place.joint,s=this.payload.joints[n].contours,r=Math.min(t.contour??(t.joint===void 0?this.place.contour:0),s.length-1),o=s[r].stations.s.length,a=Math.max(0,Math.min(o-1,t.station??0));this.place={joint:n,contour:r,station:a};for(let l of this.listeners)l(this.place,e)}step(t,e="keys"){let n=this.contour.stations.s.length,s=this.place.station+t,r=this.place.contour;this.contour.closed?s=(s%n+n)%n:s<0&&r>0?(r-=1,s=this.joint.contours[r].stations.s.length-1):s>=n&&r<this.joint.contours.length-1&&(r+=1,s=0),this.go({contour:r,station:s},e)}stretches(t=this.place.joint){let e=this.payload.joints[t].contours,n=e.reduce((a,l)=>a+l.length_mm,0),s=e.length>1?n*.03:0,r=0;return{stretches:e.map((a,l)=>{let c={contour:l,start:r,length:a.length_mm};return r+=a.length_mm+s,c}),length:r-s}}get unrolled(){return this.stretches().stretches[this.place.contour].start+this.s}at(t){let{stretches:e}=this.stretches(),n={contour:0,station:0},s=1/0;for(let r of e){let o=Math.max(0,Math.min(r.length,t-r.start)),a=Math.abs(t-r.start-o);a>=s||(s=a,n={contour:r.contour,station:Zh(this.joint.contours[r.contour].stations.s,o)})}return n}showFinding(t,e="finding"){if(t.contour===null||t.station===null)return;let n=this.payload.joints.findIndex(r=>r.id===t.joint),s=this.payload.joints[n].contours.findIndex(r=>r.id===t.contour);this.go({joint:n,contour:s,station:t.station},e)}neighbourFinding(t){let{stretches:e}=this.stretches(),n=this.unrolled,s=this.payload.findings.filter(a=>a.joint===this.joint.id&&a.station!==null).map(a=>{let l=this.joint.contours.findIndex(c=>c.id===a.contour);return{finding:a,at:e[l].start+this.joint.contours[l].stations.s[a.station]}}).sort((a,l)=>a.at-l.at||a.finding.n-l.finding.n);if(!s.length)return null;let r=s.filter(a=>t>0?a.at>n+1e-6:a.at<n-1e-6);return(t>0?r[0]??s[0]:r.at(-1)??s.at(-1)).finding}findingsHere(t=this.place){let e=this.payload.joints[t.joint];return Yh(this.payload.findings,e,e.contours[t.contour],t.station)}},_x=1;function Yh(i,t,e,n){let s=e.stations.s;return i.filter(r=>r.joint!==t.id||r.contour!==e.id||r.station===null?!1:r.from_s!==null&&r.to_s!==null?xx(r,s[n]):r.everywhere||n===r.station||Math.abs(s[n]-s[r.station])<=_x)}var $a=i=>i.severity==="note"&&(i.from_s!==null||i.everywhere);function xx(i,t){let{from_s:e,to_s:n}=i;return e===null||n===null?!1:e<=n?t>=e-1e-6&&t<=n+1e-6:t>=e-1e-6||t<=n+1e-6}function Zh(i,t){let e=0,n=i.length-1;for(;e<n;){let s=e+n>>1;i[s]<t?e=s+1:n=s}return e>0&&t-i[e-1]<i[e]-t?e-1:e}var Ya=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;t.append(this.canvas,this.overlay),new ResizeObserver(()=>this.draw()).observe(t);let s=r=>{let o=this.overlay.getBoundingClientRect();this.pick((r.clientX-o.left)*(this.view.width/o.width),(r.clientY-o.top)*(this.view.height/o.height))};this.overlay.addEventListener("pointerdown",r=>{this.view&&(this.overlay.setPointerCapture(r.pointerId),s(r))}),this.overlay.addEventListener("pointermove",r=>{this.view&&r.buttons&&s(r)})}host;atlas;walk;canvas=qt("canvas",{"aria-hidden":!0});overlay=wt("svg",{role:"group"});cursor=wt("g",{class:"plan-cursor"});view=null;shownJoint=-1;draw(t){let e=t??this.host.getBoundingClientRect();if(e.width<40||e.height<40)return;let n=Js(this.walk.joint.beam),[s,r,o,a]=[1/0,-1/0,1/0,-1/0],l=(g,_)=>{s=Math.min(s,g),r=Math.max(r,g),o=Math.min(o,_),a=Math.max(a,_)};for(let g of this.walk.joint.contours)Vi(g).forEach(_=>l(...Lr(n,_)));let c=new Set([...this.walk.joint.cover,...this.walk.joint.base]),h=this.atlas.meshes.filter(g=>c.has(g.part));for(let g of h)for(let _=0;_<g.positions.length;_+=3)l(...Lr(n,[g.positions[_],g.positions[_+1],g.positions[_+2]]));let u=t?34:40,d=Math.min((e.width-2*u)/Math.max(1e-6,r-s),(e.height-2*u)/Math.max(1e-6,a-o)),f={scale:d,width:e.width,height:e.height,plane:n,x:(s+r)/2-e.width/2/d,y:(o+a)/2+e.height/2/d};this.view=f,this.shownJoint=this.walk.place.joint,this.paintRelief(h,f),this.drawSeam(f),this.show(this.walk.place)}paintRelief(t,e){let n=Math.min(2,Math.max(1,devicePixelRatio)),[s,r]=[Math.round(e.width*n),Math.round(e.height*n)];this.canvas.width=s,this.canvas.height=r;let o=this.canvas.getContext("2d");if(!o||!t.length)return;let a=u=>vx(hn(u)),l=o.createImageData(s,r),c=a("sheet");for(let u=0;u<s*r;u++)l.data.set([...c,255],4*u);let h=new Set(this.walk.joint.cover);for(let u of[!1,!0]){let d=t.filter(g=>h.has(g.part)===u);if(!d.length)continue;let f=Pp(d,e.plane,s,r,e.scale*n,e.x,e.y);Ip(l,f,a(u?"cover-fill":"base-fill"),a("ink"),u?.6:.9,u?.55:.25)}o.putImageData(l,0,0)}at(t){let[e,n]=Lr(this.view.plane,t);return[(e-this.view.x)*this.view.scale,(this.view.y-n)*this.view.scale]}drawSeam(t){nn(this.overlay),this.overlay.setAttribute("viewBox",`0 0 ${st(t.width)} ${st(t.height)}`),this.overlay.setAttribute("aria-label","The seam seen along the light, with the findings as numbered section marks");let e=this.walk.facts;for(let n of this.walk.joint.contours){let s=Vi(n).map(r=>this.at(r));this.overlay.append(wt("path",{class:"seam casing",d:Jh(s,n.closed)}));for(let[r,o,a]of e.worst[n.id]??[]){let l=o+1<s.length?o+1:o,c=s.slice(r,l+1);n.closed&&o===s.length-1&&c.push(s[0]),this.overlay.append(wt("path",{class:`seam ${Xa[a]}`,d:Jh(c,!1)})),a===3&&this.overlay.append(wt("path",{class:"seam broken-core",d:Jh(c,!1)}))}}this.drawMarks(),this.drawAxes(t),this.overlay.append(this.cursor)}drawMarks(){let t=[];for(let e of this.atlas.payload.findings){if(e.joint!==this.walk.joint.id||e.station===null||$a(e))continue;let n=this.walk.joint.contours.find(c=>c.id===e.contour);if(!n)continue;let[s,r]=this.at(Vi(n)[e.station]),[o,a]=this.normal(n,e.station),l=t.find(c=>Math.hypot(c.x-s,c.y-r)<18);l?l.findings.push(e):t.push({x:s,y:r,nx:o,ny:a,findings:[e]})}for(let{x:e,y:n,nx:s,ny:r,findings:o}of t){let a=o[0],l=a.waived?"waived":a.severity,c=wt("g",{class:`section-mark ${l}`,tabindex:0,role:"button","data-finding":a.n,"aria-label":`Finding ${o.map(f=>f.n).join(", ")}: ${a.title}`});for(let f of[1,-1]){let[g,_]=[e+f*s*8,n+f*r*8],[p,m]=[e+f*s*19,n+f*r*19];c.append(wt("path",{class:"cut",d:`M${st(g)} ${st(_)}L${st(p)} ${st(m)}`}),wt("path",{class:"cut-arrow",d:yx(p,m,-r,s)}))}let[h,u]=[e+s*31,n+r*31];c.append(wt("text",{x:st(h),y:st(u),"text-anchor":"middle","dominant-baseline":"central"},Ms(o)));let d=f=>{f.stopPropagation(),this.walk.showFinding(a)};c.addEventListener("click",d),c.addEventListener("pointerdown",f=>f.stopPropagation()),c.addEventListener("keydown",f=>{(f.key==="Enter"||f.key===" ")&&(f.preventDefault(),d(f))}),this.overlay.append(c)}}normal(t,e){let[n,s]=Lr(this.view.plane,t.stations.u[e]),r=Math.hypot(n,s)||1;return[n/r,-s/r]}drawAxes(t){let e=[26,t.height-26],n=wt("g",{class:"axes","aria-hidden":!0});["X","Y","Z"].forEach((s,r)=>{let o=[0,0,0];o[r]=1;let[a,l]=Lr(t.plane,o);if(Math.hypot(a,l)<.3)return;let c=[e[0]+a*20,e[1]-l*20];n.append(wt("path",{d:`M${st(e[0])} ${st(e[1])}L${st(c[0])} ${st(c[1])}`}),wt("text",{x:st(c[0]+a*7),y:st(c[1]-l*7),"text-anchor":"middle","dominant-baseline":"central"},s))}),this.overlay.append(n)}show(t){if(!this.view)return;if(t.joint!==this.shownJoint){this.draw();return}let e=this.walk.contour,[n,s]=this.at(Vi(e)[t.station]),[r,o]=this.normal(e,t.station);nn(this.cursor),this.cursor.append(wt("path",{class:"casing",d:`M${st(n-r*15)} ${st(s-o*15)}L${st(n+r*15)} ${st(s+o*15)}`}),wt("path",{d:`M${st(n-r*15)} ${st(s-o*15)}L${st(n+r*15)} ${st(s+o*15)}`}),wt("circle",{cx:st(n),cy:st(s),r:5.5})),this.cursor.setAttribute("data-x",st(n)),this.cursor.setAttribute("data-y",st(s))}pick(t,e){let n={contour:0,station:0},s=1/0;this.walk.joint.contours.forEach((r,o)=>Vi(r).forEach((a,l)=>{let[c,h]=this.at(a),u=Math.hypot(c-t,h-e);u<s&&(s=u,n={contour:o,station:l})})),this.walk.go(n,"plan")}},Lp=new WeakMap;function Vi(i){let t=Lp.get(i);if(!t){let{x:e,y:n,z:s}=i.stations;t=e.map((r,o)=>[e[o],n[o],s[o]]),Lp.set(i,t)}return t}function Jh(i,t){return"M"+i.map(([e,n])=>`${st(e)} ${st(n)}`).join("L")+(t?"Z":"")}function yx(i,t,e,n){return`M${st(i+e*9)} ${st(t+n*9)}L${st(i-n*3.4)} ${st(t+e*3.4)}L${st(i+n*3.4)} ${st(t-e*3.4)}Z`}function vx(i){let t=i.replace("#",""),e=Number.parseInt(t.length===3?[...t].map(n=>n+n).join(""):t,16);return[e>>16&255,e>>8&255,e&255]}var Os={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},Bs={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},am=0,Tu=1,lm=2;var ra=1,cm=2,io=3,Ri=0,In=1,Yn=2,sr=0,so=1,Au=2,Ru=3,Cu=4,hm=5;var rr=100,um=101,dm=102,fm=103,pm=104,mm=200,gm=201,_m=202,xm=203,Pu=204,Iu=205,ym=206,vm=207,Mm=208,Sm=209,bm=210,wm=211,Em=212,Tm=213,Am=214,yl=0,vl=1,Ml=2,$r=3,Sl=4,bl=5,wl=6,El=7,jl=0,Rm=1,Cm=2,Xi=0,Lu=1,Du=2,Nu=3,Uu=4,Fu=5,Ou=6,Bu=7;var ku=300,or=301,ro=302,Kl=303,Ql=304,Tl=1e3,Hi=1001,Al=1002,An=1003,Pm=1004;var oa=1005;var $n=1006,tc=1007;var ds=1008;var Jn=1009,zu=1010,Vu=1011,oo=1012,ec=1013,Ci=1014,Pi=1015,Ii=1016,nc=1017,ic=1018,ar=1020,Gu=35902,Hu=35899,Wu=1021,Xu=1022,Li=1023,as=1026,fs=1027,qu=1028,sc=1029,ks=1030,rc=1031;var oc=1033,aa=33776,la=33777,ca=33778,ha=33779,ac=35840,lc=35841,cc=35842,hc=35843,uc=36196,dc=37492,fc=37496,pc=37488,mc=37489,ua=37490,gc=37491,_c=37808,xc=37809,yc=37810,vc=37811,Mc=37812,Sc=37813,bc=37814,wc=37815,Ec=37816,Tc=37817,Ac=37818,Rc=37819,Cc=37820,Pc=37821,Ic=36492,Lc=36494,Dc=36495,Nc=36283,Uc=36284,da=36285,Fc=36286;var Fo=2300,Rl=2301,_l=2302,yu=2303,vu=2400,Mu=2401,Su=2402;var Im=3200;var Oc=0,Lm=1,ps="",ai="srgb",Oo="srgb-linear",Bo="linear",Re="srgb";var xl=7680;var Dm=519,Nm=512,Um=513,Fm=514,$u=515,Om=516,Bm=517,Yu=518,Zu=519,km=35044;var Ju="300 es",gi=2e3,Yr=2001;function Mx(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function Sx(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function ko(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function zm(){let i=ko("canvas");return i.style.display="block",i}var Dp={},Zr=null;function ju(...i){let t="THREE."+i.shift();Zr?Zr("log",t,...i):console.log(t,...i)}function Vm(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function Yt(...i){i=Vm(i);let t="THREE."+i.shift();if(Zr)Zr("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function ee(...i){i=Vm(i);let t="THREE."+i.shift();if(Zr)Zr("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function Do(...i){let t=i.join(" ");t in Dp||(Dp[t]=!0,Yt(...i))}function Gm(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var Hm={[yl]:yl,[Ml]:wl,[Sl]:Sl,[$r]:bl,[vl]:vl,[wl]:Ml,[El]:El,[bl]:$r},Ai=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},Dn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],Np=1234567,No=Math.PI/180,Jr=180/Math.PI;function ao(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Dn[i&255]+Dn[i>>8&255]+Dn[i>>16&255]+Dn[i>>24&255]+"-"+Dn[t&255]+Dn[t>>8&255]+"-"+Dn[t>>16&15|64]+Dn[t>>24&255]+"-"+Dn[e&63|128]+Dn[e>>8&255]+"-"+Dn[e>>16&255]+Dn[e>>24&255]+Dn[n&255]+Dn[n>>8&255]+Dn[n>>16&255]+Dn[n>>24&255]).toLowerCase()}function me(i,t,e){return Math.max(t,Math.min(e,i))}function Ku(i,t){return(i%t+t)%t}function bx(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function wx(i,t,e){return i!==t?(e-i)/(t-i):0}function Uo(i,t,e){return(1-e)*i+e*t}function Ex(i,t,e,n){return Uo(i,t,1-Math.exp(-e*n))}function Tx(i,t=1){return t-Math.abs(Ku(i,t*2)-t)}function Ax(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function Rx(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function Cx(i,t){return i+Math.floor(Math.random()*(t-i+1))}function Px(i,t){return i+Math.random()*(t-i)}function Ix(i){return i*(.5-Math.random())}function Lx(i){i!==void 0&&(Np=i);let t=Np+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function Dx(i){return i*No}function Nx(i){return i*Jr}function Ux(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function Fx(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function Qu(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function Ox(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),l=o(e/2),c=r((t+n)/2),h=o((t+n)/2),u=r((t-n)/2),d=o((t-n)/2),f=r((n-t)/2),g=o((n-t)/2);switch(s){case"XYX":i.set(a*h,l*u,l*d,a*c);break;case"YZY":i.set(l*d,a*h,l*u,a*c);break;case"ZXZ":i.set(l*u,l*d,a*h,a*c);break;case"XZX":i.set(a*h,l*g,l*f,a*c);break;case"YXY":i.set(l*f,a*h,l*g,a*c);break;case"ZYZ":i.set(l*g,l*f,a*h,a*c);break;default:Yt("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function td(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Wm(i,t){if(t.constructor===Float32Array)return i;let e=td(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function Xm(i,t){if(t.constructor===Float32Array)return i;let e=td(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var ed={DEG2RAD:No,RAD2DEG:Jr,generateUUID:ao,clamp:me,euclideanModulo:Ku,mapLinear:bx,inverseLerp:wx,lerp:Uo,damp:Ex,pingpong:Tx,smoothstep:Ax,smootherstep:Rx,randInt:Cx,randFloat:Px,randFloatSpread:Ix,seededRandom:Lx,degToRad:Dx,radToDeg:Nx,isPowerOfTwo:Ux,ceilPowerOfTwo:Fx,floorPowerOfTwo:Qu,setQuaternionFromProperEuler:Ox,normalize:Xm,denormalize:Wm},ne=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=me(this.x,t.x,e.x),this.y=me(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=me(this.x,t,e),this.y=me(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(me(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},li=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let l=n[s+0],c=n[s+1],h=n[s+2],u=n[s+3],d=r[o+0],f=r[o+1],g=r[o+2],_=r[o+3];if(u!==_||l!==d||c!==f||h!==g){let p=l*d+c*f+h*g+u*_;p<0&&(d=-d,f=-f,g=-g,_=-_,p=-p);let m=1-a;if(p<.9995){let v=Math.acos(p),A=Math.sin(v);m=Math.sin(m*v)/A,a=Math.sin(a*v)/A,l=l*m+d*a,c=c*m+f*a,h=h*m+g*a,u=u*m+_*a}else{l=l*m+d*a,c=c*m+f*a,h=h*m+g*a,u=u*m+_*a;let v=1/Math.sqrt(l*l+c*c+h*h+u*u);l*=v,c*=v,h*=v,u*=v}}t[e]=l,t[e+1]=c,t[e+2]=h,t[e+3]=u}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],l=n[s+1],c=n[s+2],h=n[s+3],u=r[o],d=r[o+1],f=r[o+2],g=r[o+3];return t[e]=a*g+h*u+l*f-c*d,t[e+1]=l*g+h*d+c*u-a*f,t[e+2]=c*g+h*f+a*d-l*u,t[e+3]=h*g-a*u-l*d-c*f,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(n/2),h=a(s/2),u=a(r/2),d=l(n/2),f=l(s/2),g=l(r/2);switch(o){case"XYZ":this._x=d*h*u+c*f*g,this._y=c*f*u-d*h*g,this._z=c*h*g+d*f*u,this._w=c*h*u-d*f*g;break;case"YXZ":this._x=d*h*u+c*f*g,this._y=c*f*u-d*h*g,this._z=c*h*g-d*f*u,this._w=c*h*u+d*f*g;break;case"ZXY":this._x=d*h*u-c*f*g,this._y=c*f*u+d*h*g,this._z=c*h*g+d*f*u,this._w=c*h*u-d*f*g;break;case"ZYX":this._x=d*h*u-c*f*g,this._y=c*f*u+d*h*g,this._z=c*h*g-d*f*u,this._w=c*h*u+d*f*g;break;case"YZX":this._x=d*h*u+c*f*g,this._y=c*f*u+d*h*g,this._z=c*h*g-d*f*u,this._w=c*h*u-d*f*g;break;case"XZY":this._x=d*h*u-c*f*g,this._y=c*f*u-d*h*g,this._z=c*h*g+d*f*u,this._w=c*h*u+d*f*g;break;default:Yt("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],l=e[9],c=e[2],h=e[6],u=e[10],d=n+a+u;if(d>0){let f=.5/Math.sqrt(d+1);this._w=.25/f,this._x=(h-l)*f,this._y=(r-c)*f,this._z=(o-s)*f}else if(n>a&&n>u){let f=2*Math.sqrt(1+n-a-u);this._w=(h-l)/f,this._x=.25*f,this._y=(s+o)/f,this._z=(r+c)/f}else if(a>u){let f=2*Math.sqrt(1+a-n-u);this._w=(r-c)/f,this._x=(s+o)/f,this._y=.25*f,this._z=(l+h)/f}else{let f=2*Math.sqrt(1+u-n-a);this._w=(o-s)/f,this._x=(r+c)/f,this._y=(l+h)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(me(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,l=e._y,c=e._z,h=e._w;return this._x=n*h+o*a+s*c-r*l,this._y=s*h+o*l+r*a-n*c,this._z=r*h+o*c+n*l-s*a,this._w=o*h-n*a-s*l-r*c,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let l=1-e;if(a<.9995){let c=Math.acos(a),h=Math.sin(c);l=Math.sin(l*c)/h,e=Math.sin(e*c)/h,this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this._onChangeCallback()}else this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},W=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(Up.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(Up.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*s-a*n),h=2*(a*e-r*s),u=2*(r*n-o*e);return this.x=e+l*c+o*u-a*h,this.y=n+l*h+a*c-r*u,this.z=s+l*u+r*h-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=me(this.x,t.x,e.x),this.y=me(this.y,t.y,e.y),this.z=me(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=me(this.x,t,e),this.y=me(this.y,t,e),this.z=me(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,l=e.z;return this.x=s*l-r*a,this.y=r*o-n*l,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return Kh.copy(this).projectOnVector(t),this.sub(Kh)}reflect(t){return this.sub(Kh.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(me(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Kh=new W,Up=new li,ie=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c)}set(t,e,n,s,r,o,a,l,c){let h=this.elements;return h[0]=t,h[1]=s,h[2]=a,h[3]=e,h[4]=r,h[5]=l,h[6]=n,h[7]=o,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],l=n[6],c=n[1],h=n[4],u=n[7],d=n[2],f=n[5],g=n[8],_=s[0],p=s[3],m=s[6],v=s[1],A=s[4],M=s[7],R=s[2],w=s[5],x=s[8];return r[0]=o*_+a*v+l*R,r[3]=o*p+a*A+l*w,r[6]=o*m+a*M+l*x,r[1]=c*_+h*v+u*R,r[4]=c*p+h*A+u*w,r[7]=c*m+h*M+u*x,r[2]=d*_+f*v+g*R,r[5]=d*p+f*A+g*w,r[8]=d*m+f*M+g*x,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8];return e*o*h-e*a*c-n*r*h+n*a*l+s*r*c-s*o*l}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],u=h*o-a*c,d=a*l-h*r,f=c*r-o*l,g=e*u+n*d+s*f;if(g===0)return this.set(0,0,0,0,0,0,0,0,0);let _=1/g;return t[0]=u*_,t[1]=(s*c-h*n)*_,t[2]=(a*n-s*o)*_,t[3]=d*_,t[4]=(h*e-s*l)*_,t[5]=(s*r-a*e)*_,t[6]=f*_,t[7]=(n*l-c*e)*_,t[8]=(o*e-n*r)*_,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*o+c*a)+o+t,-s*c,s*l,-s*(-c*o+l*a)+a+e,0,0,1),this}scale(t,e){return Do("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(Qh.makeScale(t,e)),this}rotate(t){return Do("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(Qh.makeRotation(-t)),this}translate(t,e){return Do("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(Qh.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},Qh=new ie,Fp=new ie().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),Op=new ie().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function Bx(){let i={enabled:!0,workingColorSpace:Oo,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Re&&(s.r=os(s.r),s.g=os(s.g),s.b=os(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Re&&(s.r=qr(s.r),s.g=qr(s.g),s.b=qr(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===ps?Bo:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[Oo]:{primaries:t,whitePoint:n,transfer:Bo,toXYZ:Fp,fromXYZ:Op,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:ai},outputColorSpaceConfig:{drawingBufferColorSpace:ai}},[ai]:{primaries:t,whitePoint:n,transfer:Re,toXYZ:Fp,fromXYZ:Op,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:ai}}}),i}var ye=Bx();function os(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function qr(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var Dr,Cl=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{Dr===void 0&&(Dr=ko("canvas")),Dr.width=t.width,Dr.height=t.height;let s=Dr.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=Dr}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=ko("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=os(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(os(e[n]/255)*255):e[n]=os(e[n]);return{data:e,width:t.width,height:t.height}}else return Yt("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},kx=0,jr=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:kx++}),this.uuid=ao(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(tu(s[o].image)):r.push(tu(s[o]))}else r=tu(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function tu(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?Cl.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(Yt("Texture: Unable to serialize Texture."),{})}var zx=0,eu=new W,Zn=class i extends Ai{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=Hi,s=Hi,r=$n,o=ds,a=Li,l=Jn,c=i.DEFAULT_ANISOTROPY,h=ps){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:zx++}),this.uuid=ao(),this.name="",this.source=new jr(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new ne(0,0),this.repeat=new ne(1,1),this.center=new ne(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new ie,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(eu).x}get height(){return this.source.getSize(eu).y}get depth(){return this.source.getSize(eu).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){Yt(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Yt(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==ku)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case Tl:t.x=t.x-Math.floor(t.x);break;case Hi:t.x=t.x<0?0:1;break;case Al:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case Tl:t.y=t.y-Math.floor(t.y);break;case Hi:t.y=t.y<0?0:1;break;case Al:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Zn.DEFAULT_IMAGE=null;Zn.DEFAULT_MAPPING=ku;Zn.DEFAULT_ANISOTROPY=1;var $e=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,l=t.elements,c=l[0],h=l[4],u=l[8],d=l[1],f=l[5],g=l[9],_=l[2],p=l[6],m=l[10];if(Math.abs(h-d)<.01&&Math.abs(u-_)<.01&&Math.abs(g-p)<.01){if(Math.abs(h+d)<.1&&Math.abs(u+_)<.1&&Math.abs(g+p)<.1&&Math.abs(c+f+m-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let A=(c+1)/2,M=(f+1)/2,R=(m+1)/2,w=(h+d)/4,x=(u+_)/4,b=(g+p)/4;return A>M&&A>R?A<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(A),s=w/n,r=x/n):M>R?M<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(M),n=w/s,r=b/s):R<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(R),n=x/r,s=b/r),this.set(n,s,r,e),this}let v=Math.sqrt((p-g)*(p-g)+(u-_)*(u-_)+(d-h)*(d-h));return Math.abs(v)<.001&&(v=1),this.x=(p-g)/v,this.y=(u-_)/v,this.z=(d-h)/v,this.w=Math.acos((c+f+m-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=me(this.x,t.x,e.x),this.y=me(this.y,t.y,e.y),this.z=me(this.z,t.z,e.z),this.w=me(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=me(this.x,t,e),this.y=me(this.y,t,e),this.z=me(this.z,t,e),this.w=me(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Pl=class extends Ai{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:$n,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new $e(0,0,t,e),this.scissorTest=!1,this.viewport=new $e(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Zn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:$n,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new jr(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},ci=class extends Pl{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},zo=class extends Zn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=An,this.minFilter=An,this.wrapR=Hi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var Il=class extends Zn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=An,this.minFilter=An,this.wrapR=Hi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var We=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,l,c,h,u,d,f,g,_,p){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c,h,u,d,f,g,_,p)}set(t,e,n,s,r,o,a,l,c,h,u,d,f,g,_,p){let m=this.elements;return m[0]=t,m[4]=e,m[8]=n,m[12]=s,m[1]=r,m[5]=o,m[9]=a,m[13]=l,m[2]=c,m[6]=h,m[10]=u,m[14]=d,m[3]=f,m[7]=g,m[11]=_,m[15]=p,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/Nr.setFromMatrixColumn(t,0).length(),r=1/Nr.setFromMatrixColumn(t,1).length(),o=1/Nr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),u=Math.sin(r);if(t.order==="XYZ"){let d=o*h,f=o*u,g=a*h,_=a*u;e[0]=l*h,e[4]=-l*u,e[8]=c,e[1]=f+g*c,e[5]=d-_*c,e[9]=-a*l,e[2]=_-d*c,e[6]=g+f*c,e[10]=o*l}else if(t.order==="YXZ"){let d=l*h,f=l*u,g=c*h,_=c*u;e[0]=d+_*a,e[4]=g*a-f,e[8]=o*c,e[1]=o*u,e[5]=o*h,e[9]=-a,e[2]=f*a-g,e[6]=_+d*a,e[10]=o*l}else if(t.order==="ZXY"){let d=l*h,f=l*u,g=c*h,_=c*u;e[0]=d-_*a,e[4]=-o*u,e[8]=g+f*a,e[1]=f+g*a,e[5]=o*h,e[9]=_-d*a,e[2]=-o*c,e[6]=a,e[10]=o*l}else if(t.order==="ZYX"){let d=o*h,f=o*u,g=a*h,_=a*u;e[0]=l*h,e[4]=g*c-f,e[8]=d*c+_,e[1]=l*u,e[5]=_*c+d,e[9]=f*c-g,e[2]=-c,e[6]=a*l,e[10]=o*l}else if(t.order==="YZX"){let d=o*l,f=o*c,g=a*l,_=a*c;e[0]=l*h,e[4]=_-d*u,e[8]=g*u+f,e[1]=u,e[5]=o*h,e[9]=-a*h,e[2]=-c*h,e[6]=f*u+g,e[10]=d-_*u}else if(t.order==="XZY"){let d=o*l,f=o*c,g=a*l,_=a*c;e[0]=l*h,e[4]=-u,e[8]=c*h,e[1]=d*u+_,e[5]=o*h,e[9]=f*u-g,e[2]=g*u-f,e[6]=a*h,e[10]=_*u+d}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(Vx,t,Gx)}lookAt(t,e,n){let s=this.elements;return ri.subVectors(t,e),ri.lengthSq()===0&&(ri.z=1),ri.normalize(),Es.crossVectors(n,ri),Es.lengthSq()===0&&(Math.abs(n.z)===1?ri.x+=1e-4:ri.z+=1e-4,ri.normalize(),Es.crossVectors(n,ri)),Es.normalize(),Za.crossVectors(ri,Es),s[0]=Es.x,s[4]=Za.x,s[8]=ri.x,s[1]=Es.y,s[5]=Za.y,s[9]=ri.y,s[2]=Es.z,s[6]=Za.z,s[10]=ri.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],l=n[8],c=n[12],h=n[1],u=n[5],d=n[9],f=n[13],g=n[2],_=n[6],p=n[10],m=n[14],v=n[3],A=n[7],M=n[11],R=n[15],w=s[0],x=s[4],b=s[8],k=s[12],N=s[1],L=s[5],G=s[9],U=s[13],C=s[2],B=s[6],X=s[10],z=s[14],ot=s[3],$=s[7],j=s[11],tt=s[15];return r[0]=o*w+a*N+l*C+c*ot,r[4]=o*x+a*L+l*B+c*$,r[8]=o*b+a*G+l*X+c*j,r[12]=o*k+a*U+l*z+c*tt,r[1]=h*w+u*N+d*C+f*ot,r[5]=h*x+u*L+d*B+f*$,r[9]=h*b+u*G+d*X+f*j,r[13]=h*k+u*U+d*z+f*tt,r[2]=g*w+_*N+p*C+m*ot,r[6]=g*x+_*L+p*B+m*$,r[10]=g*b+_*G+p*X+m*j,r[14]=g*k+_*U+p*z+m*tt,r[3]=v*w+A*N+M*C+R*ot,r[7]=v*x+A*L+M*B+R*$,r[11]=v*b+A*G+M*X+R*j,r[15]=v*k+A*U+M*z+R*tt,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],l=t[9],c=t[13],h=t[2],u=t[6],d=t[10],f=t[14],g=t[3],_=t[7],p=t[11],m=t[15],v=l*f-c*d,A=a*f-c*u,M=a*d-l*u,R=o*f-c*h,w=o*d-l*h,x=o*u-a*h;return e*(_*v-p*A+m*M)-n*(g*v-p*R+m*w)+s*(g*A-_*R+m*x)-r*(g*M-_*w+p*x)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],l=t[2],c=t[6],h=t[10];return e*(o*h-a*c)-n*(r*h-a*l)+s*(r*c-o*l)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],u=t[9],d=t[10],f=t[11],g=t[12],_=t[13],p=t[14],m=t[15],v=e*a-n*o,A=e*l-s*o,M=e*c-r*o,R=n*l-s*a,w=n*c-r*a,x=s*c-r*l,b=h*_-u*g,k=h*p-d*g,N=h*m-f*g,L=u*p-d*_,G=u*m-f*_,U=d*m-f*p,C=v*U-A*G+M*L+R*N-w*k+x*b;if(C===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let B=1/C;return t[0]=(a*U-l*G+c*L)*B,t[1]=(s*G-n*U-r*L)*B,t[2]=(_*x-p*w+m*R)*B,t[3]=(d*w-u*x-f*R)*B,t[4]=(l*N-o*U-c*k)*B,t[5]=(e*U-s*N+r*k)*B,t[6]=(p*M-g*x-m*A)*B,t[7]=(h*x-d*M+f*A)*B,t[8]=(o*G-a*N+c*b)*B,t[9]=(n*N-e*G-r*b)*B,t[10]=(g*w-_*M+m*v)*B,t[11]=(u*M-h*w-f*v)*B,t[12]=(a*k-o*L-l*b)*B,t[13]=(e*L-n*k+s*b)*B,t[14]=(_*A-g*R-p*v)*B,t[15]=(h*R-u*A+d*v)*B,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,l=t.z,c=r*o,h=r*a;return this.set(c*o+n,c*a-s*l,c*l+s*a,0,c*a+s*l,h*a+n,h*l-s*o,0,c*l-s*a,h*l+s*o,r*l*l+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,l=e._w,c=r+r,h=o+o,u=a+a,d=r*c,f=r*h,g=r*u,_=o*h,p=o*u,m=a*u,v=l*c,A=l*h,M=l*u,R=n.x,w=n.y,x=n.z;return s[0]=(1-(_+m))*R,s[1]=(f+M)*R,s[2]=(g-A)*R,s[3]=0,s[4]=(f-M)*w,s[5]=(1-(d+m))*w,s[6]=(p+v)*w,s[7]=0,s[8]=(g+A)*x,s[9]=(p-v)*x,s[10]=(1-(d+_))*x,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=Nr.set(s[0],s[1],s[2]).length(),a=Nr.set(s[4],s[5],s[6]).length(),l=Nr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),bi.copy(this);let c=1/o,h=1/a,u=1/l;return bi.elements[0]*=c,bi.elements[1]*=c,bi.elements[2]*=c,bi.elements[4]*=h,bi.elements[5]*=h,bi.elements[6]*=h,bi.elements[8]*=u,bi.elements[9]*=u,bi.elements[10]*=u,e.setFromRotationMatrix(bi),n.x=o,n.y=a,n.z=l,this}makePerspective(t,e,n,s,r,o,a=gi,l=!1){let c=this.elements,h=2*r/(e-t),u=2*r/(n-s),d=(e+t)/(e-t),f=(n+s)/(n-s),g,_;if(l)g=r/(o-r),_=o*r/(o-r);else if(a===gi)g=-(o+r)/(o-r),_=-2*o*r/(o-r);else if(a===Yr)g=-o/(o-r),_=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=d,c[12]=0,c[1]=0,c[5]=u,c[9]=f,c[13]=0,c[2]=0,c[6]=0,c[10]=g,c[14]=_,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=gi,l=!1){let c=this.elements,h=2/(e-t),u=2/(n-s),d=-(e+t)/(e-t),f=-(n+s)/(n-s),g,_;if(l)g=1/(o-r),_=o/(o-r);else if(a===gi)g=-2/(o-r),_=-(o+r)/(o-r);else if(a===Yr)g=-1/(o-r),_=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=0,c[12]=d,c[1]=0,c[5]=u,c[9]=0,c[13]=f,c[2]=0,c[6]=0,c[10]=g,c[14]=_,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},Nr=new W,bi=new We,Vx=new W(0,0,0),Gx=new W(1,1,1),Es=new W,Za=new W,ri=new W,Bp=new We,kp=new li,ls=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],h=s[9],u=s[2],d=s[6],f=s[10];switch(e){case"XYZ":this._y=Math.asin(me(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-h,f),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(d,c),this._z=0);break;case"YXZ":this._x=Math.asin(-me(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(a,f),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-u,r),this._z=0);break;case"ZXY":this._x=Math.asin(me(d,-1,1)),Math.abs(d)<.9999999?(this._y=Math.atan2(-u,f),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-me(u,-1,1)),Math.abs(u)<.9999999?(this._x=Math.atan2(d,f),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(me(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-u,r)):(this._x=0,this._y=Math.atan2(a,f));break;case"XZY":this._z=Math.asin(-me(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(d,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-h,f),this._y=0);break;default:Yt("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return Bp.makeRotationFromQuaternion(t),this.setFromRotationMatrix(Bp,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return kp.setFromEuler(this),this.setFromQuaternion(kp,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};ls.DEFAULT_ORDER="XYZ";var Vo=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},Hx=0,zp=new W,Ur=new li,es=new We,Ja=new W,Ro=new W,Wx=new W,Xx=new li,Vp=new W(1,0,0),Gp=new W(0,1,0),Hp=new W(0,0,1),Wp={type:"added"},qx={type:"removed"},Fr={type:"childadded",child:null},nu={type:"childremoved",child:null},Fn=class i extends Ai{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:Hx++}),this.uuid=ao(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new W,e=new ls,n=new li,s=new W(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new We},normalMatrix:{value:new ie}}),this.matrix=new We,this.matrixWorld=new We,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new Vo,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return Ur.setFromAxisAngle(t,e),this.quaternion.multiply(Ur),this}rotateOnWorldAxis(t,e){return Ur.setFromAxisAngle(t,e),this.quaternion.premultiply(Ur),this}rotateX(t){return this.rotateOnAxis(Vp,t)}rotateY(t){return this.rotateOnAxis(Gp,t)}rotateZ(t){return this.rotateOnAxis(Hp,t)}translateOnAxis(t,e){return zp.copy(t).applyQuaternion(this.quaternion),this.position.add(zp.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(Vp,t)}translateY(t){return this.translateOnAxis(Gp,t)}translateZ(t){return this.translateOnAxis(Hp,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(es.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?Ja.copy(t):Ja.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),Ro.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?es.lookAt(Ro,Ja,this.up):es.lookAt(Ja,Ro,this.up),this.quaternion.setFromRotationMatrix(es),s&&(es.extractRotation(s.matrixWorld),Ur.setFromRotationMatrix(es),this.quaternion.premultiply(Ur.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(ee("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(Wp),Fr.child=t,this.dispatchEvent(Fr),Fr.child=null):ee("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(qx),nu.child=t,this.dispatchEvent(nu),nu.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),es.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),es.multiply(t.parent.matrixWorld)),t.applyMatrix4(es),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(Wp),Fr.child=t,this.dispatchEvent(Fr),Fr.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Ro,t,Wx),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Ro,Xx,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let u=l[c];r(t.shapes,u)}else r(t.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(t.materials,this.material[l]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(t.animations,l))}}if(e){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),h=o(t.images),u=o(t.shapes),d=o(t.skeletons),f=o(t.animations),g=o(t.nodes);a.length>0&&(n.geometries=a),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),h.length>0&&(n.images=h),u.length>0&&(n.shapes=u),d.length>0&&(n.skeletons=d),f.length>0&&(n.animations=f),g.length>0&&(n.nodes=g)}return n.object=s,n;function o(a){let l=[];for(let c in a){let h=a[c];delete h.metadata,l.push(h)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};Fn.DEFAULT_UP=new W(0,1,0);Fn.DEFAULT_MATRIX_AUTO_UPDATE=!0;Fn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Ti=class extends Fn{constructor(){super(),this.isGroup=!0,this.type="Group"}},$x={type:"move"},Kr=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Ti,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Ti,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new W,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new W),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Ti,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new W,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new W,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let _ of t.hand.values()){let p=e.getJointPose(_,n),m=this._getHandJoint(c,_);p!==null&&(m.matrix.fromArray(p.transform.matrix),m.matrix.decompose(m.position,m.quaternion,m.scale),m.matrixWorldNeedsUpdate=!0,m.jointRadius=p.radius),m.visible=p!==null}let h=c.joints["index-finger-tip"],u=c.joints["thumb-tip"],d=h.position.distanceTo(u.position),f=.02,g=.005;c.inputState.pinching&&d>f+g?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&d<=f-g&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent($x)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Ti;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},qm={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Ts={h:0,s:0,l:0},ja={h:0,s:0,l:0};function iu(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var ae=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=ai){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,ye.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=ye.workingColorSpace){return this.r=t,this.g=e,this.b=n,ye.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=ye.workingColorSpace){if(t=Ku(t,1),e=me(e,0,1),n=me(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=iu(o,r,t+1/3),this.g=iu(o,r,t),this.b=iu(o,r,t-1/3)}return ye.colorSpaceToWorking(this,s),this}setStyle(t,e=ai){function n(r){r!==void 0&&parseFloat(r)<1&&Yt("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:Yt("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);Yt("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=ai){let n=qm[t.toLowerCase()];return n!==void 0?this.setHex(n,e):Yt("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=os(t.r),this.g=os(t.g),this.b=os(t.b),this}copyLinearToSRGB(t){return this.r=qr(t.r),this.g=qr(t.g),this.b=qr(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=ai){return ye.workingToColorSpace(Nn.copy(this),t),Math.round(me(Nn.r*255,0,255))*65536+Math.round(me(Nn.g*255,0,255))*256+Math.round(me(Nn.b*255,0,255))}getHexString(t=ai){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=ye.workingColorSpace){ye.workingToColorSpace(Nn.copy(this),e);let n=Nn.r,s=Nn.g,r=Nn.b,o=Math.max(n,s,r),a=Math.min(n,s,r),l,c,h=(a+o)/2;if(a===o)l=0,c=0;else{let u=o-a;switch(c=h<=.5?u/(o+a):u/(2-o-a),o){case n:l=(s-r)/u+(s<r?6:0);break;case s:l=(r-n)/u+2;break;case r:l=(n-s)/u+4;break}l/=6}return t.h=l,t.s=c,t.l=h,t}getRGB(t,e=ye.workingColorSpace){return ye.workingToColorSpace(Nn.copy(this),e),t.r=Nn.r,t.g=Nn.g,t.b=Nn.b,t}getStyle(t=ai){ye.workingToColorSpace(Nn.copy(this),t);let e=Nn.r,n=Nn.g,s=Nn.b;return t!==ai?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(Ts),this.setHSL(Ts.h+t,Ts.s+e,Ts.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(Ts),t.getHSL(ja);let n=Uo(Ts.h,ja.h,e),s=Uo(Ts.s,ja.s,e),r=Uo(Ts.l,ja.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},Nn=new ae;ae.NAMES=qm;var Go=class extends Fn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new ls,this.environmentIntensity=1,this.environmentRotation=new ls,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},wi=new W,ns=new W,su=new W,is=new W,Or=new W,Br=new W,Xp=new W,ru=new W,ou=new W,au=new W,lu=new $e,cu=new $e,hu=new $e,Ps=class i{constructor(t=new W,e=new W,n=new W){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),wi.subVectors(t,e),s.cross(wi);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){wi.subVectors(s,e),ns.subVectors(n,e),su.subVectors(t,e);let o=wi.dot(wi),a=wi.dot(ns),l=wi.dot(su),c=ns.dot(ns),h=ns.dot(su),u=o*c-a*a;if(u===0)return r.set(0,0,0),null;let d=1/u,f=(c*l-a*h)*d,g=(o*h-a*l)*d;return r.set(1-f-g,g,f)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,is)===null?!1:is.x>=0&&is.y>=0&&is.x+is.y<=1}static getInterpolation(t,e,n,s,r,o,a,l){return this.getBarycoord(t,e,n,s,is)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,is.x),l.addScaledVector(o,is.y),l.addScaledVector(a,is.z),l)}static getInterpolatedAttribute(t,e,n,s,r,o){return lu.setScalar(0),cu.setScalar(0),hu.setScalar(0),lu.fromBufferAttribute(t,e),cu.fromBufferAttribute(t,n),hu.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(lu,r.x),o.addScaledVector(cu,r.y),o.addScaledVector(hu,r.z),o}static isFrontFacing(t,e,n,s){return wi.subVectors(n,e),ns.subVectors(t,e),wi.cross(ns).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return wi.subVectors(this.c,this.b),ns.subVectors(this.a,this.b),wi.cross(ns).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;Or.subVectors(s,n),Br.subVectors(r,n),ru.subVectors(t,n);let l=Or.dot(ru),c=Br.dot(ru);if(l<=0&&c<=0)return e.copy(n);ou.subVectors(t,s);let h=Or.dot(ou),u=Br.dot(ou);if(h>=0&&u<=h)return e.copy(s);let d=l*u-h*c;if(d<=0&&l>=0&&h<=0&&l-h>0)return o=l/(l-h),e.copy(n).addScaledVector(Or,o);au.subVectors(t,r);let f=Or.dot(au),g=Br.dot(au);if(g>=0&&f<=g)return e.copy(r);let _=f*c-l*g;if(_<=0&&c>=0&&g<=0)return a=c/(c-g),e.copy(n).addScaledVector(Br,a);let p=h*g-f*u;if(p<=0&&u-h>=0&&f-g>=0)return Xp.subVectors(r,s),a=(u-h)/(u-h+(f-g)),e.copy(s).addScaledVector(Xp,a);let m=1/(p+_+d);return o=_*m,a=d*m,e.copy(n).addScaledVector(Or,o).addScaledVector(Br,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},Is=class{constructor(t=new W(1/0,1/0,1/0),e=new W(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(Ei.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(Ei.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=Ei.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Ei):Ei.fromBufferAttribute(r,o),Ei.applyMatrix4(t.matrixWorld),this.expandByPoint(Ei);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),Ka.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),Ka.copy(n.boundingBox)),Ka.applyMatrix4(t.matrixWorld),this.union(Ka)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Ei),Ei.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Co),Qa.subVectors(this.max,Co),kr.subVectors(t.a,Co),zr.subVectors(t.b,Co),Vr.subVectors(t.c,Co),As.subVectors(zr,kr),Rs.subVectors(Vr,zr),js.subVectors(kr,Vr);let e=[0,-As.z,As.y,0,-Rs.z,Rs.y,0,-js.z,js.y,As.z,0,-As.x,Rs.z,0,-Rs.x,js.z,0,-js.x,-As.y,As.x,0,-Rs.y,Rs.x,0,-js.y,js.x,0];return!uu(e,kr,zr,Vr,Qa)||(e=[1,0,0,0,1,0,0,0,1],!uu(e,kr,zr,Vr,Qa))?!1:(tl.crossVectors(As,Rs),e=[tl.x,tl.y,tl.z],uu(e,kr,zr,Vr,Qa))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Ei).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Ei).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(ss[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),ss[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),ss[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),ss[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),ss[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),ss[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),ss[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),ss[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(ss),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},ss=[new W,new W,new W,new W,new W,new W,new W,new W],Ei=new W,Ka=new Is,kr=new W,zr=new W,Vr=new W,As=new W,Rs=new W,js=new W,Co=new W,Qa=new W,tl=new W,Ks=new W;function uu(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){Ks.fromArray(i,r);let a=s.x*Math.abs(Ks.x)+s.y*Math.abs(Ks.y)+s.z*Math.abs(Ks.z),l=t.dot(Ks),c=e.dot(Ks),h=n.dot(Ks);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>a)return!1}return!0}var dn=new W,el=new ne,Yx=0,Un=class extends Ai{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:Yx++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=km,this.updateRanges=[],this.gpuType=Pi,this.version=0,this._normalizationScale=t!==void 0?td(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)el.fromBufferAttribute(this,e),el.applyMatrix3(t),this.setXY(e,el.x,el.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyMatrix3(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyMatrix4(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyNormalMatrix(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.transformDirection(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):Wm(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):Xm(t,this.array)}};var Ho=class extends Un{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var Wo=class extends Un{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var Pn=class extends Un{constructor(t,e,n){super(new Float32Array(t),e,n)}},Zx=new Is,Po=new W,du=new W,er=class{constructor(t=new W,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):Zx.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;Po.subVectors(t,this.center);let e=Po.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(Po,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(du.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(Po.copy(t.center).add(du)),this.expandByPoint(Po.copy(t.center).sub(du))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},Jx=0,mi=new We,fu=new Fn,Gr=new W,oi=new Is,Io=new Is,Tn=new W,On=class i extends Ai{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:Jx++}),this.uuid=ao(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(Mx(t)?Wo:Ho)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new ie().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return mi.makeRotationFromQuaternion(t),this.applyMatrix4(mi),this}rotateX(t){return mi.makeRotationX(t),this.applyMatrix4(mi),this}rotateY(t){return mi.makeRotationY(t),this.applyMatrix4(mi),this}rotateZ(t){return mi.makeRotationZ(t),this.applyMatrix4(mi),this}translate(t,e,n){return mi.makeTranslation(t,e,n),this.applyMatrix4(mi),this}scale(t,e,n){return mi.makeScale(t,e,n),this.applyMatrix4(mi),this}lookAt(t){return fu.lookAt(t),fu.updateMatrix(),this.applyMatrix4(fu.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Gr).negate(),this.translate(Gr.x,Gr.y,Gr.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Pn(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&Yt("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Is);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ee("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new W(-1/0,-1/0,-1/0),new W(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];oi.setFromBufferAttribute(r),this.morphTargetsRelative?(Tn.addVectors(this.boundingBox.min,oi.min),this.boundingBox.expandByPoint(Tn),Tn.addVectors(this.boundingBox.max,oi.max),this.boundingBox.expandByPoint(Tn)):(this.boundingBox.expandByPoint(oi.min),this.boundingBox.expandByPoint(oi.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&ee('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new er);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ee("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new W,1/0);return}if(t){let n=this.boundingSphere.center;if(oi.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];Io.setFromBufferAttribute(a),this.morphTargetsRelative?(Tn.addVectors(oi.min,Io.min),oi.expandByPoint(Tn),Tn.addVectors(oi.max,Io.max),oi.expandByPoint(Tn)):(oi.expandByPoint(Io.min),oi.expandByPoint(Io.max))}oi.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)Tn.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(Tn));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],l=this.morphTargetsRelative;for(let c=0,h=a.count;c<h;c++)Tn.fromBufferAttribute(a,c),l&&(Gr.fromBufferAttribute(t,c),Tn.add(Gr)),s=Math.max(s,n.distanceToSquared(Tn))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&ee('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){ee("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Un(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(n.count);for(let k=0;k<n.count;k++)a[k]=new W,l[k]=new W;let h=new W,u=new W,d=new W,f=new ne,g=new ne,_=new ne,p=new W,m=new W;function v(k,N,L){c[k]=c[N]=c[L]=1,h.fromBufferAttribute(n,k),u.fromBufferAttribute(n,N),d.fromBufferAttribute(n,L),f.fromBufferAttribute(r,k),g.fromBufferAttribute(r,N),_.fromBufferAttribute(r,L),u.sub(h),d.sub(h),g.sub(f),_.sub(f);let G=1/(g.x*_.y-_.x*g.y);isFinite(G)&&(p.copy(u).multiplyScalar(_.y).addScaledVector(d,-g.y).multiplyScalar(G),m.copy(d).multiplyScalar(g.x).addScaledVector(u,-_.x).multiplyScalar(G),a[k].add(p),a[N].add(p),a[L].add(p),l[k].add(m),l[N].add(m),l[L].add(m))}let A=this.groups;A.length===0&&(A=[{start:0,count:t.count}]);for(let k=0,N=A.length;k<N;++k){let L=A[k],G=L.start,U=L.count;for(let C=G,B=G+U;C<B;C+=3)v(t.getX(C+0),t.getX(C+1),t.getX(C+2))}let M=new W,R=new W,w=new W,x=new W;function b(k){w.fromBufferAttribute(s,k),x.copy(w);let N=a[k];M.copy(N),M.sub(w.multiplyScalar(w.dot(N))).normalize(),R.crossVectors(x,N);let G=R.dot(l[k])<0?-1:1;o.setXYZW(k,M.x,M.y,M.z,G)}for(let k=0,N=n.count;k<N;++k)c[k]&&b(k);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new Un(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let d=0,f=n.count;d<f;d++)n.setXYZ(d,0,0,0);let s=new W,r=new W,o=new W,a=new W,l=new W,c=new W,h=new W,u=new W;if(t)for(let d=0,f=t.count;d<f;d+=3){let g=t.getX(d+0),_=t.getX(d+1),p=t.getX(d+2);s.fromBufferAttribute(e,g),r.fromBufferAttribute(e,_),o.fromBufferAttribute(e,p),h.subVectors(o,r),u.subVectors(s,r),h.cross(u),a.fromBufferAttribute(n,g),l.fromBufferAttribute(n,_),c.fromBufferAttribute(n,p),a.add(h),l.add(h),c.add(h),n.setXYZ(g,a.x,a.y,a.z),n.setXYZ(_,l.x,l.y,l.z),n.setXYZ(p,c.x,c.y,c.z)}else for(let d=0,f=e.count;d<f;d+=3)s.fromBufferAttribute(e,d+0),r.fromBufferAttribute(e,d+1),o.fromBufferAttribute(e,d+2),h.subVectors(o,r),u.subVectors(s,r),h.cross(u),n.setXYZ(d+0,h.x,h.y,h.z),n.setXYZ(d+1,h.x,h.y,h.z),n.setXYZ(d+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)Tn.fromBufferAttribute(t,e),Tn.normalize(),t.setXYZ(e,Tn.x,Tn.y,Tn.z)}toNonIndexed(){function t(a,l){let c=a.array,h=a.itemSize,u=a.normalized,d=new c.constructor(l.length*h),f=0,g=0;for(let _=0,p=l.length;_<p;_++){a.isInterleavedBufferAttribute?f=l[_]*a.data.stride+a.offset:f=l[_]*h;for(let m=0;m<h;m++)d[g++]=c[f++]}return new Un(d,h,u)}if(this.index===null)return Yt("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=t(l,n);e.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let h=0,u=c.length;h<u;h++){let d=c[h],f=t(d,n);l.push(f)}e.morphAttributes[a]=l}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];e.addGroup(c.start,c.count,c.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let l in n){let c=n[l];t.data.attributes[l]=c.toJSON(t.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let u=0,d=c.length;u<d;u++){let f=c[u];h.push(f.toJSON(t.data))}h.length>0&&(s[l]=h,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(e))}let r=t.morphAttributes;for(let c in r){let h=[],u=r[c];for(let d=0,f=u.length;d<f;d++)h.push(u[d].clone(e));this.morphAttributes[c]=h}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,h=o.length;c<h;c++){let u=o[c];this.addGroup(u.start,u.count,u.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var pu=new W,jx=new W,Kx=new ie,Xn=class{constructor(t=new W(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=pu.subVectors(n,e).cross(jx.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(pu),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||Kx.getNormalMatrix(t),s=this.coplanarPoint(pu).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},Qx=0,cs=class extends Ai{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:Qx++}),this.uuid=ao(),this.name="",this.type="Material",this.blending=so,this.side=Ri,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=Pu,this.blendDst=Iu,this.blendEquation=rr,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new ae(0,0,0),this.blendAlpha=0,this.depthFunc=$r,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=Dm,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=xl,this.stencilZFail=xl,this.stencilZPass=xl,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){Yt(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Yt(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new ae().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new Xn().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new ne().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new ne().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var rs=new W,mu=new W,nl=new W,il=new W,nr=class{constructor(t=new W,e=new W(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,rs)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=rs.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(rs.copy(this.origin).addScaledVector(this.direction,e),rs.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){mu.copy(t).add(e).multiplyScalar(.5),nl.copy(e).sub(t).normalize(),il.copy(this.origin).sub(mu);let r=t.distanceTo(e)*.5,o=-this.direction.dot(nl),a=il.dot(this.direction),l=-il.dot(nl),c=il.lengthSq(),h=Math.abs(1-o*o),u,d,f,g;if(h>0)if(u=o*l-a,d=o*a-l,g=r*h,u>=0)if(d>=-g)if(d<=g){let _=1/h;u*=_,d*=_,f=u*(u+o*d+2*a)+d*(o*u+d+2*l)+c}else d=r,u=Math.max(0,-(o*d+a)),f=-u*u+d*(d+2*l)+c;else d=-r,u=Math.max(0,-(o*d+a)),f=-u*u+d*(d+2*l)+c;else d<=-g?(u=Math.max(0,-(-o*r+a)),d=u>0?-r:Math.min(Math.max(-r,-l),r),f=-u*u+d*(d+2*l)+c):d<=g?(u=0,d=Math.min(Math.max(-r,-l),r),f=d*(d+2*l)+c):(u=Math.max(0,-(o*r+a)),d=u>0?r:Math.min(Math.max(-r,-l),r),f=-u*u+d*(d+2*l)+c);else d=o>0?-r:r,u=Math.max(0,-(o*d+a)),f=-u*u+d*(d+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,u),s&&s.copy(mu).addScaledVector(nl,d),f}intersectSphere(t,e){if(t.radius<0)return null;rs.subVectors(t.center,this.origin);let n=rs.dot(this.direction),s=rs.dot(rs)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,l=n+o;return l<0?null:a<0?this.at(l,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,l,c=1/this.direction.x,h=1/this.direction.y,u=1/this.direction.z,d=this.origin;return c>=0?(n=(t.min.x-d.x)*c,s=(t.max.x-d.x)*c):(n=(t.max.x-d.x)*c,s=(t.min.x-d.x)*c),h>=0?(r=(t.min.y-d.y)*h,o=(t.max.y-d.y)*h):(r=(t.max.y-d.y)*h,o=(t.min.y-d.y)*h),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),u>=0?(a=(t.min.z-d.z)*u,l=(t.max.z-d.z)*u):(a=(t.max.z-d.z)*u,l=(t.min.z-d.z)*u),n>l||a>s)||((a>n||n!==n)&&(n=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,rs)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,h=a.z,u=t.x-o.x,d=t.y-o.y,f=t.z-o.z,g=e.x-o.x,_=e.y-o.y,p=e.z-o.z,m=n.x-o.x,v=n.y-o.y,A=n.z-o.z,M=Math.abs(l),R=Math.abs(c),w=Math.abs(h),x,b,k,N,L,G,U,C,B,X,z,ot;if(M>=R&&M>=w?(k=l,G=u,B=g,ot=m,l>=0?(x=c,b=h,N=d,L=f,U=_,C=p,X=v,z=A):(x=h,b=c,N=f,L=d,U=p,C=_,X=A,z=v)):R>=w?(k=c,G=d,B=_,ot=v,c>=0?(x=h,b=l,N=f,L=u,U=p,C=g,X=A,z=m):(x=l,b=h,N=u,L=f,U=g,C=p,X=m,z=A)):(k=h,G=f,B=p,ot=A,h>=0?(x=l,b=c,N=u,L=d,U=g,C=_,X=m,z=v):(x=c,b=l,N=d,L=u,U=_,C=g,X=v,z=m)),k===0)return null;let $=x/k,j=b/k,tt=1/k,pt=N-$*G,ht=L-j*G,K=U-$*B,mt=C-j*B,lt=X-$*ot,ft=z-j*ot,_t=lt*mt-ft*K,Ht=pt*ft-ht*lt,jt=K*ht-mt*pt;if(s){if(_t<0||Ht<0||jt<0)return null}else if((_t<0||Ht<0||jt<0)&&(_t>0||Ht>0||jt>0))return null;let Vt=_t+Ht+jt;if(Vt===0)return null;let de=tt*(_t*G+Ht*B+jt*ot);return(Vt>0?de<0:de>0)?null:this.at(de/Vt,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},hs=class extends cs{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new ae(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ls,this.combine=jl,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},qp=new We,Qs=new nr,sl=new er,$p=new W,rl=new W,ol=new W,al=new W,gu=new W,ll=new W,Yp=new W,cl=new W,Rn=class extends Fn{constructor(t=new On,e=new hs){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){ll.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=a[l],u=r[l];h!==0&&(gu.fromBufferAttribute(u,t),o?ll.addScaledVector(gu,h):ll.addScaledVector(gu.sub(e),h))}e.add(ll)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),sl.copy(n.boundingSphere),sl.applyMatrix4(r),Qs.copy(t.ray).recast(t.near),!(sl.containsPoint(Qs.origin)===!1&&(Qs.intersectSphere(sl,$p)===null||Qs.origin.distanceToSquared($p)>(t.far-t.near)**2))&&(qp.copy(r).invert(),Qs.copy(t.ray).applyMatrix4(qp),!(n.boundingBox!==null&&Qs.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,Qs)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,u=r.attributes.normal,d=r.groups,f=r.drawRange;if(a!==null)if(Array.isArray(o))for(let g=0,_=d.length;g<_;g++){let p=d[g],m=o[p.materialIndex],v=Math.max(p.start,f.start),A=Math.min(a.count,Math.min(p.start+p.count,f.start+f.count));for(let M=v,R=A;M<R;M+=3){let w=a.getX(M),x=a.getX(M+1),b=a.getX(M+2);s=hl(this,m,t,n,c,h,u,w,x,b),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),_=Math.min(a.count,f.start+f.count);for(let p=g,m=_;p<m;p+=3){let v=a.getX(p),A=a.getX(p+1),M=a.getX(p+2);s=hl(this,o,t,n,c,h,u,v,A,M),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let g=0,_=d.length;g<_;g++){let p=d[g],m=o[p.materialIndex],v=Math.max(p.start,f.start),A=Math.min(l.count,Math.min(p.start+p.count,f.start+f.count));for(let M=v,R=A;M<R;M+=3){let w=M,x=M+1,b=M+2;s=hl(this,m,t,n,c,h,u,w,x,b),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),_=Math.min(l.count,f.start+f.count);for(let p=g,m=_;p<m;p+=3){let v=p,A=p+1,M=p+2;s=hl(this,o,t,n,c,h,u,v,A,M),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}}};function ty(i,t,e,n,s,r,o,a){let l;if(t.side===In?l=n.intersectTriangle(o,r,s,!0,a):l=n.intersectTriangle(s,r,o,t.side===Ri,a),l===null)return null;cl.copy(a),cl.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(cl);return c<e.near||c>e.far?null:{distance:c,point:cl.clone(),object:i}}function hl(i,t,e,n,s,r,o,a,l,c){i.getVertexPosition(a,rl),i.getVertexPosition(l,ol),i.getVertexPosition(c,al);let h=ty(i,t,e,n,rl,ol,al,Yp);if(h){let u=new W;Ps.getBarycoord(Yp,rl,ol,al,u),s&&(h.uv=Ps.getInterpolatedAttribute(s,a,l,c,u,new ne)),r&&(h.uv1=Ps.getInterpolatedAttribute(r,a,l,c,u,new ne)),o&&(h.normal=Ps.getInterpolatedAttribute(o,a,l,c,u,new W),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let d={a,b:l,c,normal:new W,materialIndex:0};Ps.getNormal(rl,ol,al,d.normal),h.face=d,h.barycoord=u}return h}var Ll=class extends Zn{constructor(t=null,e=1,n=1,s,r,o,a,l,c=An,h=An,u,d){super(null,o,a,l,c,h,s,r,u,d),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var tr=new er,ey=new ne(.5,.5),ul=new W,Ls=class{constructor(t=new Xn,e=new Xn,n=new Xn,s=new Xn,r=new Xn,o=new Xn){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=gi,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],l=r[2],c=r[3],h=r[4],u=r[5],d=r[6],f=r[7],g=r[8],_=r[9],p=r[10],m=r[11],v=r[12],A=r[13],M=r[14],R=r[15];if(s[0].setComponents(c-o,f-h,m-g,R-v).normalize(),s[1].setComponents(c+o,f+h,m+g,R+v).normalize(),s[2].setComponents(c+a,f+u,m+_,R+A).normalize(),s[3].setComponents(c-a,f-u,m-_,R-A).normalize(),n)s[4].setComponents(l,d,p,M).normalize(),s[5].setComponents(c-l,f-d,m-p,R-M).normalize();else if(s[4].setComponents(c-l,f-d,m-p,R-M).normalize(),e===gi)s[5].setComponents(c+l,f+d,m+p,R+M).normalize();else if(e===Yr)s[5].setComponents(l,d,p,M).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),tr.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),tr.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(tr)}intersectsSprite(t){tr.center.set(0,0,0);let e=ey.distanceTo(t.center);return tr.radius=.7071067811865476+e,tr.applyMatrix4(t.matrixWorld),this.intersectsSphere(tr)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(ul.x=s.normal.x>0?t.max.x:t.min.x,ul.y=s.normal.y>0?t.max.y:t.min.y,ul.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(ul)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},Zp=new We,Dl=class i{constructor(){this.coordinateSystem=gi,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];Zp.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new Ls),n[s].setFromProjectionMatrix(Zp,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new Ls),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var Ds=class extends cs{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new ae(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},Nl=new W,Ul=new W,Jp=new We,Lo=new nr,dl=new er,_u=new W,jp=new W,Xo=class extends Fn{constructor(t=new On,e=new Ds){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)Nl.fromBufferAttribute(e,s-1),Ul.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=Nl.distanceTo(Ul);t.setAttribute("lineDistance",new Pn(n,1))}else Yt("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),dl.copy(n.boundingSphere),dl.applyMatrix4(s),dl.radius+=r,t.ray.intersectsSphere(dl)===!1)return;Jp.copy(s).invert(),Lo.copy(t.ray).applyMatrix4(Jp);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,h=n.index,d=n.attributes.position;if(h!==null){let f=Math.max(0,o.start),g=Math.min(h.count,o.start+o.count);for(let _=f,p=g-1;_<p;_+=c){let m=h.getX(_),v=h.getX(_+1),A=fl(this,t,Lo,l,m,v,_);A&&e.push(A)}if(this.isLineLoop){let _=h.getX(g-1),p=h.getX(f),m=fl(this,t,Lo,l,_,p,g-1);m&&e.push(m)}}else{let f=Math.max(0,o.start),g=Math.min(d.count,o.start+o.count);for(let _=f,p=g-1;_<p;_+=c){let m=fl(this,t,Lo,l,_,_+1,_);m&&e.push(m)}if(this.isLineLoop){let _=fl(this,t,Lo,l,g-1,f,g-1);_&&e.push(_)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function fl(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(Nl.fromBufferAttribute(a,s),Ul.fromBufferAttribute(a,r),e.distanceSqToSegment(Nl,Ul,_u,jp)>n)return;_u.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(_u);if(!(c<t.near||c>t.far))return{distance:c,point:jp.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var Kp=new W,Qp=new W,Qr=class extends Xo{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)Kp.fromBufferAttribute(e,s),Qp.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+Kp.distanceTo(Qp);t.setAttribute("lineDistance",new Pn(n,1))}else Yt("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}},qo=class extends Xo{constructor(t,e){super(t,e),this.isLineLoop=!0,this.type="LineLoop"}};var $o=class extends Zn{constructor(t=[],e=or,n,s,r,o,a,l,c,h){super(t,e,n,s,r,o,a,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var us=class extends Zn{constructor(t,e,n=Ci,s,r,o,a=An,l=An,c,h=as,u=1){if(h!==as&&h!==fs)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let d={width:t,height:e,depth:u};super(d,s,r,o,a,l,h,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new jr(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},Yo=class extends us{constructor(t,e=Ci,n=or,s,r,o=An,a=An,l,c=as){let h={width:t,height:t,depth:1},u=[h,h,h,h,h,h];super(t,t,e,n,s,r,o,a,l,c),this.image=u,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},Zo=class extends Zn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},to=class i extends On{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],h=[],u=[],d=0,f=0;g("z","y","x",-1,-1,n,e,t,o,r,0),g("z","y","x",1,-1,n,e,-t,o,r,1),g("x","z","y",1,1,t,n,e,s,o,2),g("x","z","y",1,-1,t,n,-e,s,o,3),g("x","y","z",1,-1,t,e,n,s,r,4),g("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new Pn(c,3)),this.setAttribute("normal",new Pn(h,3)),this.setAttribute("uv",new Pn(u,2));function g(_,p,m,v,A,M,R,w,x,b,k){let N=M/x,L=R/b,G=M/2,U=R/2,C=w/2,B=x+1,X=b+1,z=0,ot=0,$=new W;for(let j=0;j<X;j++){let tt=j*L-U;for(let pt=0;pt<B;pt++){let ht=pt*N-G;$[_]=ht*v,$[p]=tt*A,$[m]=C,c.push($.x,$.y,$.z),$[_]=0,$[p]=0,$[m]=w>0?1:-1,h.push($.x,$.y,$.z),u.push(pt/x),u.push(1-j/b),z+=1}}for(let j=0;j<b;j++)for(let tt=0;tt<x;tt++){let pt=d+tt+B*j,ht=d+tt+B*(j+1),K=d+(tt+1)+B*(j+1),mt=d+(tt+1)+B*j;l.push(pt,ht,mt),l.push(ht,K,mt),ot+=6}a.addGroup(f,ot,k),f+=ot,d+=z}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}};var ir=class i extends On{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),l=Math.floor(s),c=a+1,h=l+1,u=t/a,d=e/l,f=[],g=[],_=[],p=[];for(let m=0;m<h;m++){let v=m*d-o;for(let A=0;A<c;A++){let M=A*u-r;g.push(M,-v,0),_.push(0,0,1),p.push(A/a),p.push(1-m/l)}}for(let m=0;m<l;m++)for(let v=0;v<a;v++){let A=v+c*m,M=v+c*(m+1),R=v+1+c*(m+1),w=v+1+c*m;f.push(A,M,w),f.push(M,R,w)}this.setIndex(f),this.setAttribute("position",new Pn(g,3)),this.setAttribute("normal",new Pn(_,3)),this.setAttribute("uv",new Pn(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var Jo=class i extends On{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let l=Math.min(o+a,Math.PI),c=0,h=[],u=new W,d=new W,f=[],g=[],_=[],p=[];for(let m=0;m<=n;m++){let v=[],A=m/n,M=o+A*a,R=t*Math.cos(M),w=Math.sqrt(t*t-R*R),x=0;m===0&&o===0?x=.5/e:m===n&&l===Math.PI&&(x=-.5/e);for(let b=0;b<=e;b++){let k=b/e,N=s+k*r;u.x=-w*Math.cos(N),u.y=R,u.z=w*Math.sin(N),g.push(u.x,u.y,u.z),d.copy(u).normalize(),_.push(d.x,d.y,d.z),p.push(k+x,1-A),v.push(c++)}h.push(v)}for(let m=0;m<n;m++)for(let v=0;v<e;v++){let A=h[m][v+1],M=h[m][v],R=h[m+1][v],w=h[m+1][v+1];(m!==0||o>0)&&f.push(A,M,w),(m!==n-1||l<Math.PI)&&f.push(M,R,w)}this.setIndex(f),this.setAttribute("position",new Pn(g,3)),this.setAttribute("normal",new Pn(_,3)),this.setAttribute("uv",new Pn(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function lr(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(tm(s))s.isRenderTargetTexture?(Yt("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(tm(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function Bn(i){let t={};for(let e=0;e<i.length;e++){let n=lr(i[e]);for(let s in n)t[s]=n[s]}return t}function tm(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function ny(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function nd(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:ye.workingColorSpace}var $m={clone:lr,merge:Bn},iy=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,sy=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Wi=class extends cs{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=iy,this.fragmentShader=sy,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=lr(t.uniforms),this.uniformsGroups=ny(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new ae().setHex(s.value);break;case"v2":this.uniforms[n].value=new ne().fromArray(s.value);break;case"v3":this.uniforms[n].value=new W().fromArray(s.value);break;case"v4":this.uniforms[n].value=new $e().fromArray(s.value);break;case"m3":this.uniforms[n].value=new ie().fromArray(s.value);break;case"m4":this.uniforms[n].value=new We().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Fl=class extends Wi{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var jo=class extends cs{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new ae(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new ae(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=Oc,this.normalScale=new ne(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ls,this.combine=jl,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},Ol=class extends cs{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=Im,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},Bl=class extends cs{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function Hr(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function pl(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Ns=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},kl=class extends Ns{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:vu,endingEnd:vu}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case Mu:r=t,a=2*e-n;break;case Su:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(l===void 0)switch(this.getSettings_().endingEnd){case Mu:o=t,l=2*n-e;break;case Su:o=1,l=n+s[1]-s[0];break;default:o=t-1,l=e}let c=(n-e)*.5,h=this.valueSize;this._weightPrev=c/(e-a),this._weightNext=c/(l-n),this._offsetPrev=r*h,this._offsetNext=o*h}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this._offsetPrev,u=this._offsetNext,d=this._weightPrev,f=this._weightNext,g=(n-e)/(s-e),_=g*g,p=_*g,m=-d*p+2*d*_-d*g,v=(1+d)*p+(-1.5-2*d)*_+(-.5+d)*g+1,A=(-1-f)*p+(1.5+f)*_+.5*g,M=f*p-f*_;for(let R=0;R!==a;++R)r[R]=m*o[h+R]+v*o[c+R]+A*o[l+R]+M*o[u+R];return r}},zl=class extends Ns{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=(n-e)/(s-e),u=1-h;for(let d=0;d!==a;++d)r[d]=o[c+d]*u+o[l+d]*h;return r}},Vl=class extends Ns{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},Gl=class extends Ns{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this.inTangents,u=this.outTangents;if(!h||!u){let g=(n-e)/(s-e),_=1-g;for(let p=0;p!==a;++p)r[p]=o[c+p]*_+o[l+p]*g;return r}let d=a*2,f=t-1;for(let g=0;g!==a;++g){let _=o[c+g],p=o[l+g],m=f*d+g*2,v=u[m],A=u[m+1],M=t*d+g*2,R=h[M],w=h[M+1],x=oy(n,e,v,R,s);r[g]=Ym(x,_,A,w,p)}return r}};function Ym(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function ry(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function oy(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=Ym(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let l=ry(r,t,e,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var hi=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=Hr(e,this.TimeBufferType),this.values=Hr(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:Hr(t.times,Array),values:Hr(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),pl(t.settings)&&(n.settings={inTangents:Hr(t.settings.inTangents,Array),outTangents:Hr(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new Vl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new zl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new kl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new Gl(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case Fo:e=this.InterpolantFactoryMethodDiscrete;break;case Rl:e=this.InterpolantFactoryMethodLinear;break;case _l:e=this.InterpolantFactoryMethodSmooth;break;case yu:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return Yt("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return Fo;case this.InterpolantFactoryMethodLinear:return Rl;case this.InterpolantFactoryMethodSmooth:return _l;case this.InterpolantFactoryMethodBezier:return yu}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;pl(this.settings)&&(em(this.settings.inTangents,t),em(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;pl(this.settings)&&(nm(this.settings.inTangents,t),nm(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(ee("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(ee("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let l=n[a];if(typeof l=="number"&&isNaN(l)){ee("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){ee("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(s!==void 0&&Sx(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){ee("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===_l,r=t.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=t[a],h=t[a+1];if(c!==h&&(a!==1||c!==t[0]))if(s)l=!0;else{let u=a*n,d=u-n,f=u+n;for(let g=0;g!==n;++g){let _=e[u+g];if(_!==e[d+g]||_!==e[f+g]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let u=a*n,d=o*n;for(let f=0;f!==n;++f)e[d+f]=e[u+f]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,l=o*n,c=0;c!==n;++c)e[l+c]=e[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,pl(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function em(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function nm(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}hi.prototype.ValueTypeName="";hi.prototype.TimeBufferType=Float32Array;hi.prototype.ValueBufferType=Float32Array;hi.prototype.DefaultInterpolation=Rl;var Us=class extends hi{constructor(t,e,n){super(t,e,n)}};Us.prototype.ValueTypeName="bool";Us.prototype.ValueBufferType=Array;Us.prototype.DefaultInterpolation=Fo;Us.prototype.InterpolantFactoryMethodLinear=void 0;Us.prototype.InterpolantFactoryMethodSmooth=void 0;var Hl=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}};Hl.prototype.ValueTypeName="color";var Wl=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}};Wl.prototype.ValueTypeName="number";var Xl=class extends Ns{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(n-e)/(s-e),c=t*a;for(let h=c+a;c!==h;c+=4)li.slerpFlat(r,0,o,c-a,o,c,l);return r}},Ko=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new Xl(this.times,this.values,this.getValueSize(),t)}};Ko.prototype.ValueTypeName="quaternion";Ko.prototype.InterpolantFactoryMethodSmooth=void 0;var Fs=class extends hi{constructor(t,e,n){super(t,e,n)}};Fs.prototype.ValueTypeName="string";Fs.prototype.ValueBufferType=Array;Fs.prototype.DefaultInterpolation=Fo;Fs.prototype.InterpolantFactoryMethodLinear=void 0;Fs.prototype.InterpolantFactoryMethodSmooth=void 0;var ql=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}};ql.prototype.ValueTypeName="vector";var $l=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(h){a++,r===!1&&s.onStart!==void 0&&s.onStart(h,o,a),r=!0},this.itemEnd=function(h){o++,s.onProgress!==void 0&&s.onProgress(h,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,u){return c.push(h,u),this},this.removeHandler=function(h){let u=c.indexOf(h);return u!==-1&&c.splice(u,2),this},this.getHandler=function(h){for(let u=0,d=c.length;u<d;u+=2){let f=c[u],g=c[u+1];if(f.global&&(f.lastIndex=0),f.test(h))return g}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},Zm=new $l,Yl=class{constructor(t){this.manager=t!==void 0?t:Zm,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};Yl.DEFAULT_MATERIAL_NAME="__DEFAULT";var Qo=class extends Fn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new ae(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}};var xu=new We,im=new W,sm=new W,Zl=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new ne(512,512),this.mapType=Jn,this.map=null,this.mapPass=null,this.matrix=new We,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new Ls,this._frameExtents=new ne(1,1),this._viewportCount=1,this._viewports=[new $e(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;im.setFromMatrixPosition(t.matrixWorld),e.position.copy(im),sm.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(sm),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){xu.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(xu,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;t.coordinateSystem===Yr||t.reversedDepth?e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),e.multiply(xu)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},ml=new W,gl=new li,Gi=new W,ta=class extends Fn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new We,this.projectionMatrix=new We,this.projectionMatrixInverse=new We,this.coordinateSystem=gi,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(ml,gl,Gi),Gi.x===1&&Gi.y===1&&Gi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(ml,gl,Gi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(ml,gl,Gi),Gi.x===1&&Gi.y===1&&Gi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(ml,gl,Gi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Cs=new W,rm=new ne,om=new ne,qn=class extends ta{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=Jr*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(No*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return Jr*2*Math.atan(Math.tan(No*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){Cs.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(Cs.x,Cs.y).multiplyScalar(-t/Cs.z),Cs.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Cs.x,Cs.y).multiplyScalar(-t/Cs.z)}getViewSize(t,e){return this.getViewBounds(t,rm,om),e.subVectors(om,rm)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(No*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,e-=o.offsetY*n/c,s*=o.width/l,n*=o.height/c}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var ea=class extends ta{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,l=s-e;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=h*this.view.offsetY,l=a-h*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},bu=class extends Zl{constructor(){super(new ea(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},na=class extends Qo{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(Fn.DEFAULT_UP),this.updateMatrix(),this.target=new Fn,this.shadow=new bu}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}},ia=class extends Qo{constructor(t,e){super(t,e),this.isAmbientLight=!0,this.type="AmbientLight"}};var Wr=-90,Xr=1,eo=class extends Fn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new qn(Wr,Xr,t,e);s.layers=this.layers,this.add(s);let r=new qn(Wr,Xr,t,e);r.layers=this.layers,this.add(r);let o=new qn(Wr,Xr,t,e);o.layers=this.layers,this.add(o);let a=new qn(Wr,Xr,t,e);a.layers=this.layers,this.add(a);let l=new qn(Wr,Xr,t,e);l.layers=this.layers,this.add(l);let c=new qn(Wr,Xr,t,e);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,l]=e;for(let c of e)this.remove(c);if(t===gi)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===Yr)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of e)this.add(c),c.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,h]=this.children,u=t.getRenderTarget(),d=t.getActiveCubeFace(),f=t.getActiveMipmapLevel(),g=t.xr.enabled;t.xr.enabled=!1;let _=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let p=!1;t.isWebGLRenderer===!0?p=t.state.buffers.depth.getReversed():p=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),t.setRenderTarget(n,4,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),n.texture.mipmapsAutoUpdate=_,t.setRenderTarget(n,5,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,h),t.setRenderTarget(u,d,f),t.xr.enabled=g,n.texture.needsPMREMUpdate=!0}},Jl=class extends qn{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var id="\\[\\]\\.:\\/",ay=new RegExp("["+id+"]","g"),sd="[^"+id+"]",ly="[^"+id.replace("\\.","")+"]",cy=/((?:WC+[\/:])*)/.source.replace("WC",sd),hy=/(WCOD+)?/.source.replace("WCOD",ly),uy=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",sd),dy=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",sd),fy=new RegExp("^"+cy+hy+uy+dy+"$"),py=["material","materials","bones","map"],wu=class{constructor(t,e,n){let s=n||He.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},He=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(ay,"")}static parseTrackName(t){let e=fy.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);py.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let l=n(a.children);if(l)return l}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){Yt("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=e.objectIndex;switch(n){case"materials":if(!t.material){ee("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){ee("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){ee("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let h=0;h<t.length;h++)if(t[h].name===c){c=h;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){ee("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){ee("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){ee("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(c!==void 0){if(t[c]===void 0){ee("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[s];if(o===void 0){let c=e.nodeName;ee("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){ee("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){ee("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};He.Composite=wu;He.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};He.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};He.prototype.GetterByBindingType=[He.prototype._getValue_direct,He.prototype._getValue_array,He.prototype._getValue_arrayElement,He.prototype._getValue_toArray];He.prototype.SetterByBindingTypeAndVersioning=[[He.prototype._setValue_direct,He.prototype._setValue_direct_setNeedsUpdate,He.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[He.prototype._setValue_array,He.prototype._setValue_array_setNeedsUpdate,He.prototype._setValue_array_setMatrixWorldNeedsUpdate],[He.prototype._setValue_arrayElement,He.prototype._setValue_arrayElement_setNeedsUpdate,He.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[He.prototype._setValue_fromArray,He.prototype._setValue_fromArray_setNeedsUpdate,He.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var l1=new Float32Array(1);var no=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=me(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(me(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var Eu=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var sa=class extends Ai{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function rd(i,t,e,n){let s=my(n);switch(e){case Wu:return i*t;case qu:return i*t/s.components*s.byteLength;case sc:return i*t/s.components*s.byteLength;case ks:return i*t*2/s.components*s.byteLength;case rc:return i*t*2/s.components*s.byteLength;case Xu:return i*t*3/s.components*s.byteLength;case Li:return i*t*4/s.components*s.byteLength;case oc:return i*t*4/s.components*s.byteLength;case aa:case la:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case ca:case ha:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case lc:case hc:return Math.max(i,16)*Math.max(t,8)/4;case ac:case cc:return Math.max(i,8)*Math.max(t,8)/2;case uc:case dc:case pc:case mc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case fc:case ua:case gc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case _c:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case xc:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case yc:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case vc:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case Mc:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case Sc:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case bc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case wc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case Ec:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case Tc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case Ac:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case Rc:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case Cc:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case Pc:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case Ic:case Lc:case Dc:return Math.ceil(i/4)*Math.ceil(t/4)*16;case Nc:case Uc:return Math.ceil(i/4)*Math.ceil(t/4)*8;case da:case Fc:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function my(i){switch(i){case Jn:case zu:return{byteLength:1,components:1};case oo:case Vu:case Ii:return{byteLength:2,components:1};case nc:case ic:return{byteLength:2,components:4};case Ci:case ec:case Pi:return{byteLength:4,components:1};case Gu:case Hu:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Yt("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function _g(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function _y(i){let t=new WeakMap;function e(a,l){let c=a.array,h=a.usage,u=c.byteLength,d=i.createBuffer();i.bindBuffer(l,d),i.bufferData(l,c,h),a.onUploadCallback();let f;if(c instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)f=i.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)f=i.SHORT;else if(c instanceof Uint32Array)f=i.UNSIGNED_INT;else if(c instanceof Int32Array)f=i.INT;else if(c instanceof Int8Array)f=i.BYTE;else if(c instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:d,type:f,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:u}}function n(a,l,c){let h=l.array,u=l.updateRanges;if(i.bindBuffer(c,a),u.length===0)i.bufferSubData(c,0,h);else{u.sort((f,g)=>f.start-g.start);let d=0;for(let f=1;f<u.length;f++){let g=u[d],_=u[f];_.start<=g.start+g.count+1?g.count=Math.max(g.count,_.start+_.count-g.start):(++d,u[d]=_)}u.length=d+1;for(let f=0,g=u.length;f<g;f++){let _=u[f];i.bufferSubData(c,_.start*h.BYTES_PER_ELEMENT,h,_.start,_.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(i.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let h=t.get(a);(!h||h.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,e(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var xy=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,yy=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,vy=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,My=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Sy=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,by=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,wy=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,Ey=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,Ty=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,Ay=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,Ry=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,Cy=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,Py=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,Iy=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,Ly=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,Dy=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,Ny=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,Uy=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,Fy=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,Oy=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,By=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,ky=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,zy=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,Vy=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,Gy=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,Hy=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Wy=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,Xy=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,qy=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,$y="gl_FragColor = linearToOutputTexel( gl_FragColor );",Yy=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,Zy=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,Jy=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,jy=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,Ky=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,Qy=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,tv=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,ev=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,nv=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,iv=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,sv=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,rv=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,ov=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,av=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,lv=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,cv=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,hv=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,uv=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,dv=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,fv=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,pv=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,mv=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,gv=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,_v=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,xv=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,yv=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,vv=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,Mv=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Sv=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,bv=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,wv=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,Ev=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,Tv=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,Av=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Rv=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,Cv=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,Pv=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,Iv=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,Lv=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Dv=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,Nv=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Uv=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,Fv=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,Ov=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Bv=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,kv=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,zv=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,Vv=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,Gv=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,Hv=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,Wv=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,Xv=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,qv=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,$v=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,Yv=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,Zv=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,Jv=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,jv=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,Kv=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,Qv=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,tM=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,eM=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,nM=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,iM=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,sM=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,rM=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,oM=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,aM=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,lM=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,cM=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,hM=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,uM=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,dM=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,fM=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,pM=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,mM=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,gM=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,_M=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,xM=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,yM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,vM=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,MM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,SM=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,bM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,wM=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,EM=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,TM=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,AM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,RM=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,CM=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,PM=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,IM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,LM=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,DM=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,NM=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,UM=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,FM=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,OM=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,BM=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,kM=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,zM=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,VM=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,GM=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,HM=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,WM=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,XM=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,qM=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,$M=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,YM=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,ZM=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,JM=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,ue={alphahash_fragment:xy,alphahash_pars_fragment:yy,alphamap_fragment:vy,alphamap_pars_fragment:My,alphatest_fragment:Sy,alphatest_pars_fragment:by,aomap_fragment:wy,aomap_pars_fragment:Ey,batching_pars_vertex:Ty,batching_vertex:Ay,begin_vertex:Ry,beginnormal_vertex:Cy,bsdfs:Py,iridescence_fragment:Iy,bumpmap_pars_fragment:Ly,clipping_planes_fragment:Dy,clipping_planes_pars_fragment:Ny,clipping_planes_pars_vertex:Uy,clipping_planes_vertex:Fy,color_fragment:Oy,color_pars_fragment:By,color_pars_vertex:ky,color_vertex:zy,common:Vy,defaultnormal_vertex:Gy,displacementmap_pars_vertex:Hy,displacementmap_vertex:Wy,emissivemap_fragment:Xy,emissivemap_pars_fragment:qy,colorspace_fragment:$y,colorspace_pars_fragment:Yy,envmap_fragment:Zy,envmap_common_pars_fragment:Jy,envmap_pars_fragment:jy,envmap_pars_vertex:Ky,envmap_physical_pars_fragment:cv,envmap_vertex:Qy,fog_vertex:tv,fog_pars_vertex:ev,fog_fragment:nv,fog_pars_fragment:iv,gradientmap_pars_fragment:sv,lightmap_pars_fragment:rv,lights_lambert_fragment:ov,lights_lambert_pars_fragment:av,lights_pars_begin:lv,lights_toon_fragment:hv,lights_toon_pars_fragment:uv,lights_phong_fragment:dv,lights_phong_pars_fragment:fv,lights_physical_fragment:pv,lights_physical_pars_fragment:mv,lights_fragment_begin:gv,lights_fragment_maps:_v,lights_fragment_end:xv,lightprobes_pars_fragment:yv,logdepthbuf_fragment:vv,logdepthbuf_pars_fragment:Mv,logdepthbuf_pars_vertex:Sv,logdepthbuf_vertex:bv,map_fragment:wv,map_pars_fragment:Ev,map_particle_fragment:Tv,map_particle_pars_fragment:Av,metalnessmap_fragment:Rv,metalnessmap_pars_fragment:Cv,morphinstance_vertex:Pv,morphcolor_vertex:Iv,morphnormal_vertex:Lv,morphtarget_pars_vertex:Dv,morphtarget_vertex:Nv,normal_fragment_begin:Uv,normal_fragment_maps:Fv,normal_pars_fragment:Ov,normal_pars_vertex:Bv,normal_vertex:kv,normalmap_pars_fragment:zv,clearcoat_normal_fragment_begin:Vv,clearcoat_normal_fragment_maps:Gv,clearcoat_pars_fragment:Hv,iridescence_pars_fragment:Wv,opaque_fragment:Xv,packing:qv,premultiplied_alpha_fragment:$v,project_vertex:Yv,dithering_fragment:Zv,dithering_pars_fragment:Jv,roughnessmap_fragment:jv,roughnessmap_pars_fragment:Kv,shadowmap_pars_fragment:Qv,shadowmap_pars_vertex:tM,shadowmap_vertex:eM,shadowmask_pars_fragment:nM,skinbase_vertex:iM,skinning_pars_vertex:sM,skinning_vertex:rM,skinnormal_vertex:oM,specularmap_fragment:aM,specularmap_pars_fragment:lM,tonemapping_fragment:cM,tonemapping_pars_fragment:hM,transmission_fragment:uM,transmission_pars_fragment:dM,uv_pars_fragment:fM,uv_pars_vertex:pM,uv_vertex:mM,worldpos_vertex:gM,background_vert:_M,background_frag:xM,backgroundCube_vert:yM,backgroundCube_frag:vM,cube_vert:MM,cube_frag:SM,depth_vert:bM,depth_frag:wM,distance_vert:EM,distance_frag:TM,equirect_vert:AM,equirect_frag:RM,linedashed_vert:CM,linedashed_frag:PM,meshbasic_vert:IM,meshbasic_frag:LM,meshlambert_vert:DM,meshlambert_frag:NM,meshmatcap_vert:UM,meshmatcap_frag:FM,meshnormal_vert:OM,meshnormal_frag:BM,meshphong_vert:kM,meshphong_frag:zM,meshphysical_vert:VM,meshphysical_frag:GM,meshtoon_vert:HM,meshtoon_frag:WM,points_vert:XM,points_frag:qM,shadow_vert:$M,shadow_frag:YM,sprite_vert:ZM,sprite_frag:JM},Dt={common:{diffuse:{value:new ae(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new ie},alphaMap:{value:null},alphaMapTransform:{value:new ie},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new ie}},envmap:{envMap:{value:null},envMapRotation:{value:new ie},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new ie}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new ie}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new ie},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new ie},normalScale:{value:new ne(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new ie},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new ie}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new ie}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new ie}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new ae(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new ae(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new ie},alphaTest:{value:0},uvTransform:{value:new ie}},sprite:{diffuse:{value:new ae(16777215)},opacity:{value:1},center:{value:new ne(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new ie},alphaMap:{value:null},alphaMapTransform:{value:new ie},alphaTest:{value:0}}},$i={basic:{uniforms:Bn([Dt.common,Dt.specularmap,Dt.envmap,Dt.aomap,Dt.lightmap,Dt.fog]),vertexShader:ue.meshbasic_vert,fragmentShader:ue.meshbasic_frag},lambert:{uniforms:Bn([Dt.common,Dt.specularmap,Dt.envmap,Dt.aomap,Dt.lightmap,Dt.emissivemap,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.fog,Dt.lights,{emissive:{value:new ae(0)},envMapIntensity:{value:1}}]),vertexShader:ue.meshlambert_vert,fragmentShader:ue.meshlambert_frag},phong:{uniforms:Bn([Dt.common,Dt.specularmap,Dt.envmap,Dt.aomap,Dt.lightmap,Dt.emissivemap,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.fog,Dt.lights,{emissive:{value:new ae(0)},specular:{value:new ae(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:ue.meshphong_vert,fragmentShader:ue.meshphong_frag},standard:{uniforms:Bn([Dt.common,Dt.envmap,Dt.aomap,Dt.lightmap,Dt.emissivemap,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.roughnessmap,Dt.metalnessmap,Dt.fog,Dt.lights,{emissive:{value:new ae(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:ue.meshphysical_vert,fragmentShader:ue.meshphysical_frag},toon:{uniforms:Bn([Dt.common,Dt.aomap,Dt.lightmap,Dt.emissivemap,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.gradientmap,Dt.fog,Dt.lights,{emissive:{value:new ae(0)}}]),vertexShader:ue.meshtoon_vert,fragmentShader:ue.meshtoon_frag},matcap:{uniforms:Bn([Dt.common,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.fog,{matcap:{value:null}}]),vertexShader:ue.meshmatcap_vert,fragmentShader:ue.meshmatcap_frag},points:{uniforms:Bn([Dt.points,Dt.fog]),vertexShader:ue.points_vert,fragmentShader:ue.points_frag},dashed:{uniforms:Bn([Dt.common,Dt.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:ue.linedashed_vert,fragmentShader:ue.linedashed_frag},depth:{uniforms:Bn([Dt.common,Dt.displacementmap]),vertexShader:ue.depth_vert,fragmentShader:ue.depth_frag},normal:{uniforms:Bn([Dt.common,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,{opacity:{value:1}}]),vertexShader:ue.meshnormal_vert,fragmentShader:ue.meshnormal_frag},sprite:{uniforms:Bn([Dt.sprite,Dt.fog]),vertexShader:ue.sprite_vert,fragmentShader:ue.sprite_frag},background:{uniforms:{uvTransform:{value:new ie},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:ue.background_vert,fragmentShader:ue.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new ie}},vertexShader:ue.backgroundCube_vert,fragmentShader:ue.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:ue.cube_vert,fragmentShader:ue.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:ue.equirect_vert,fragmentShader:ue.equirect_frag},distance:{uniforms:Bn([Dt.common,Dt.displacementmap,{referencePosition:{value:new W},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:ue.distance_vert,fragmentShader:ue.distance_frag},shadow:{uniforms:Bn([Dt.lights,Dt.fog,{color:{value:new ae(0)},opacity:{value:1}}]),vertexShader:ue.shadow_vert,fragmentShader:ue.shadow_frag}};$i.physical={uniforms:Bn([$i.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new ie},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new ie},clearcoatNormalScale:{value:new ne(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new ie},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new ie},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new ie},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new ie},sheen:{value:0},sheenColor:{value:new ae(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new ie},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new ie},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new ie},transmissionSamplerSize:{value:new ne},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new ie},attenuationDistance:{value:0},attenuationColor:{value:new ae(0)},specularColor:{value:new ae(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new ie},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new ie},anisotropyVector:{value:new ne},anisotropyMap:{value:null},anisotropyMapTransform:{value:new ie}}]),vertexShader:ue.meshphysical_vert,fragmentShader:ue.meshphysical_frag};var Bc={r:0,b:0,g:0},jM=new We,xg=new ie;xg.set(-1,0,0,0,1,0,0,0,1);function KM(i,t,e,n,s,r){let o=new ae(0),a=s===!0?0:1,l,c,h=null,u=0,d=null;function f(v){let A=v.isScene===!0?v.background:null;if(A&&A.isTexture){let M=v.backgroundBlurriness>0;A=t.get(A,M)}return A}function g(v){let A=!1,M=f(v);M===null?p(o,a):M&&M.isColor&&(p(M,1),A=!0);let R=i.xr.getEnvironmentBlendMode();R==="additive"?e.buffers.color.setClear(0,0,0,1,r):R==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||A)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function _(v,A){let M=f(A);M&&M.isCubeTexture?(c===void 0&&(c=new Rn(new to(1,1,1),new Wi({name:"BackgroundCubeMaterial",uniforms:lr($i.backgroundCube.uniforms),vertexShader:$i.backgroundCube.vertexShader,fragmentShader:$i.backgroundCube.fragmentShader,side:In,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(R,w,x){this.matrixWorld.copyPosition(x.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=M,c.material.uniforms.backgroundBlurriness.value=A.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=A.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(jM.makeRotationFromEuler(A.backgroundRotation)).transpose(),M.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(xg),c.material.toneMapped=ye.getTransfer(M.colorSpace)!==Re,(h!==M||u!==M.version||d!==i.toneMapping)&&(c.material.needsUpdate=!0,h=M,u=M.version,d=i.toneMapping),c.layers.enableAll(),v.unshift(c,c.geometry,c.material,0,0,null)):M&&M.isTexture&&(l===void 0&&(l=new Rn(new ir(2,2),new Wi({name:"BackgroundMaterial",uniforms:lr($i.background.uniforms),vertexShader:$i.background.vertexShader,fragmentShader:$i.background.fragmentShader,side:Ri,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=M,l.material.uniforms.backgroundIntensity.value=A.backgroundIntensity,l.material.toneMapped=ye.getTransfer(M.colorSpace)!==Re,M.matrixAutoUpdate===!0&&M.updateMatrix(),l.material.uniforms.uvTransform.value.copy(M.matrix),(h!==M||u!==M.version||d!==i.toneMapping)&&(l.material.needsUpdate=!0,h=M,u=M.version,d=i.toneMapping),l.layers.enableAll(),v.unshift(l,l.geometry,l.material,0,0,null))}function p(v,A){v.getRGB(Bc,nd(i)),e.buffers.color.setClear(Bc.r,Bc.g,Bc.b,A,r)}function m(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(v,A=1){o.set(v),a=A,p(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(v){a=v,p(o,a)},render:g,addToRenderList:_,dispose:m}}function QM(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=d(null),r=s,o=!1;function a(L,G,U,C,B){let X=!1,z=u(L,C,U,G);r!==z&&(r=z,c(r.object)),X=f(L,C,U,B),X&&g(L,C,U,B),B!==null&&t.update(B,i.ELEMENT_ARRAY_BUFFER),(X||o)&&(o=!1,M(L,G,U,C),B!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(B).buffer))}function l(){return i.createVertexArray()}function c(L){return i.bindVertexArray(L)}function h(L){return i.deleteVertexArray(L)}function u(L,G,U,C){let B=C.wireframe===!0,X=n[G.id];X===void 0&&(X={},n[G.id]=X);let z=L.isInstancedMesh===!0?L.id:0,ot=X[z];ot===void 0&&(ot={},X[z]=ot);let $=ot[U.id];$===void 0&&($={},ot[U.id]=$);let j=$[B];return j===void 0&&(j=d(l()),$[B]=j),j}function d(L){let G=[],U=[],C=[];for(let B=0;B<e;B++)G[B]=0,U[B]=0,C[B]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:G,enabledAttributes:U,attributeDivisors:C,object:L,attributes:{},index:null}}function f(L,G,U,C){let B=r.attributes,X=G.attributes,z=0,ot=U.getAttributes();for(let $ in ot)if(ot[$].location>=0){let tt=B[$],pt=X[$];if(pt===void 0&&($==="instanceMatrix"&&L.instanceMatrix&&(pt=L.instanceMatrix),$==="instanceColor"&&L.instanceColor&&(pt=L.instanceColor)),tt===void 0||tt.attribute!==pt||pt&&tt.data!==pt.data)return!0;z++}return r.attributesNum!==z||r.index!==C}function g(L,G,U,C){let B={},X=G.attributes,z=0,ot=U.getAttributes();for(let $ in ot)if(ot[$].location>=0){let tt=X[$];tt===void 0&&($==="instanceMatrix"&&L.instanceMatrix&&(tt=L.instanceMatrix),$==="instanceColor"&&L.instanceColor&&(tt=L.instanceColor));let pt={};pt.attribute=tt,tt&&tt.data&&(pt.data=tt.data),B[$]=pt,z++}r.attributes=B,r.attributesNum=z,r.index=C}function _(){let L=r.newAttributes;for(let G=0,U=L.length;G<U;G++)L[G]=0}function p(L){m(L,0)}function m(L,G){let U=r.newAttributes,C=r.enabledAttributes,B=r.attributeDivisors;U[L]=1,C[L]===0&&(i.enableVertexAttribArray(L),C[L]=1),B[L]!==G&&(i.vertexAttribDivisor(L,G),B[L]=G)}function v(){let L=r.newAttributes,G=r.enabledAttributes;for(let U=0,C=G.length;U<C;U++)G[U]!==L[U]&&(i.disableVertexAttribArray(U),G[U]=0)}function A(L,G,U,C,B,X,z){z===!0?i.vertexAttribIPointer(L,G,U,B,X):i.vertexAttribPointer(L,G,U,C,B,X)}function M(L,G,U,C){_();let B=C.attributes,X=U.getAttributes(),z=G.defaultAttributeValues;for(let ot in X){let $=X[ot];if($.location>=0){let j=B[ot];if(j===void 0&&(ot==="instanceMatrix"&&L.instanceMatrix&&(j=L.instanceMatrix),ot==="instanceColor"&&L.instanceColor&&(j=L.instanceColor)),j!==void 0){let tt=j.normalized,pt=j.itemSize,ht=t.get(j);if(ht===void 0)continue;let K=ht.buffer,mt=ht.type,lt=ht.bytesPerElement,ft=mt===i.INT||mt===i.UNSIGNED_INT||j.gpuType===ec;if(j.isInterleavedBufferAttribute){let _t=j.data,Ht=_t.isInterleavedBuffer===!0?_t.stride:_t.itemSize,jt=j.offset;if(_t.isInstancedInterleavedBuffer||_t.isInstancedBufferAttribute){for(let Vt=0;Vt<$.locationSize;Vt++)m($.location+Vt,_t.meshPerAttribute);L.isInstancedMesh!==!0&&C._maxInstanceCount===void 0&&(C._maxInstanceCount=_t.meshPerAttribute*_t.count)}else for(let Vt=0;Vt<$.locationSize;Vt++)p($.location+Vt);i.bindBuffer(i.ARRAY_BUFFER,K);for(let Vt=0;Vt<$.locationSize;Vt++)A($.location+Vt,pt/$.locationSize,mt,tt,Ht*lt,(jt+pt/$.locationSize*Vt)*lt,ft)}else{if(j.isInstancedBufferAttribute){for(let _t=0;_t<$.locationSize;_t++)m($.location+_t,j.meshPerAttribute);L.isInstancedMesh!==!0&&C._maxInstanceCount===void 0&&(C._maxInstanceCount=j.meshPerAttribute*j.count)}else for(let _t=0;_t<$.locationSize;_t++)p($.location+_t);i.bindBuffer(i.ARRAY_BUFFER,K);for(let _t=0;_t<$.locationSize;_t++)A($.location+_t,pt/$.locationSize,mt,tt,pt*lt,pt/$.locationSize*_t*lt,ft)}}else if(z!==void 0){let tt=z[ot];if(tt!==void 0)switch(tt.length){case 2:i.vertexAttrib2fv($.location,tt);break;case 3:i.vertexAttrib3fv($.location,tt);break;case 4:i.vertexAttrib4fv($.location,tt);break;default:i.vertexAttrib1fv($.location,tt)}}}}v()}function R(){k();for(let L in n){let G=n[L];for(let U in G){let C=G[U];for(let B in C){let X=C[B];for(let z in X)h(X[z].object),delete X[z];delete C[B]}}delete n[L]}}function w(L){if(n[L.id]===void 0)return;let G=n[L.id];for(let U in G){let C=G[U];for(let B in C){let X=C[B];for(let z in X)h(X[z].object),delete X[z];delete C[B]}}delete n[L.id]}function x(L){for(let G in n){let U=n[G];for(let C in U){let B=U[C];if(B[L.id]===void 0)continue;let X=B[L.id];for(let z in X)h(X[z].object),delete X[z];delete B[L.id]}}}function b(L){for(let G in n){let U=n[G],C=L.isInstancedMesh===!0?L.id:0,B=U[C];if(B!==void 0){for(let X in B){let z=B[X];for(let ot in z)h(z[ot].object),delete z[ot];delete B[X]}delete U[C],Object.keys(U).length===0&&delete n[G]}}}function k(){N(),o=!0,r!==s&&(r=s,c(r.object))}function N(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:k,resetDefaultState:N,dispose:R,releaseStatesOfGeometry:w,releaseStatesOfObject:b,releaseStatesOfProgram:x,initAttributes:_,enableAttribute:p,disableUnusedAttributes:v}}function tS(i,t,e){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),e.update(c,n,1)}function o(l,c,h){h!==0&&(i.drawArraysInstanced(n,l,c,h),e.update(c,n,h))}function a(l,c,h){if(h===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,h);let d=0;for(let f=0;f<h;f++)d+=c[f];e.update(d,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function eS(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let x=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(x.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(x){return!(x!==Li&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(x){let b=x===Ii&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(x!==Jn&&x!==Pi&&!b&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(x){if(x==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";x="mediump"}return x==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=e.precision!==void 0?e.precision:"highp",h=l(c);h!==c&&(Yt("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let u=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),d=e.logarithmicDepthBuffer===!0&&u===!1;e.reversedDepthBuffer===!0&&u===!1&&Yt("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&u===!0&&Yt("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),g=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),_=i.getParameter(i.MAX_TEXTURE_SIZE),p=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),m=i.getParameter(i.MAX_VERTEX_ATTRIBS),v=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),A=i.getParameter(i.MAX_VARYING_VECTORS),M=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),R=i.getParameter(i.MAX_SAMPLES),w=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:d,reversedDepthBuffer:u,maxTextures:f,maxVertexTextures:g,maxTextureSize:_,maxCubemapSize:p,maxAttributes:m,maxVertexUniforms:v,maxVaryings:A,maxFragmentUniforms:M,maxSamples:R,samples:w}}function nS(i){let t=this,e=null,n=0,s=!1,r=!1,o=new Xn,a=new ie,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(u,d){let f=u.length!==0||d||n!==0||s;return s=d,n=u.length,f},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(u,d){e=h(u,d,0)},this.setState=function(u,d,f){let g=u.clippingPlanes,_=u.clipIntersection,p=u.clipShadows,m=i.get(u);if(!s||g===null||g.length===0||r&&!p)r?h(null):c();else{let v=r?0:n,A=v*4,M=m.clippingState||null;l.value=M,M=h(g,d,A,f);for(let R=0;R!==A;++R)M[R]=e[R];m.clippingState=M,this.numIntersection=_?this.numPlanes:0,this.numPlanes+=v}};function c(){l.value!==e&&(l.value=e,l.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function h(u,d,f,g){let _=u!==null?u.length:0,p=null;if(_!==0){if(p=l.value,g!==!0||p===null){let m=f+_*4,v=d.matrixWorldInverse;a.getNormalMatrix(v),(p===null||p.length<m)&&(p=new Float32Array(m));for(let A=0,M=f;A!==_;++A,M+=4)o.copy(u[A]).applyMatrix4(v,a),o.normal.toArray(p,M),p[M+3]=o.constant}l.value=p,l.needsUpdate=!0}return t.numPlanes=_,t.numIntersection=0,p}}var ma=class extends ci{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new $o(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new to(5,5,5),r=new Wi({name:"CubemapFromEquirect",uniforms:lr(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:In,blending:sr});r.uniforms.tEquirect.value=e;let o=new Rn(s,r),a=e.minFilter;return e.minFilter===ds&&(e.minFilter=$n),new eo(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},Jm=256,iS=3,sS=20,yg=256,vg=16,rS=3,oS=new W,aS=new ae,zc=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new eo(1,10,null),this._boxMesh=new Rn(new to(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=oS}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),h=this._getSourceTarget(!0);e>0&&(h.texture.mipmapsAutoUpdate=!1);let u=l.autoClear,d=l.autoClearColor,f=l.autoClearDepth,g=l.autoClearStencil,_=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,_===null&&(t.background=l.getClearColor(aS));let p=new eo(n,s,h);return p.position.copy(a),p.update(l,t),l.autoClear=u,l.autoClearColor=d,l.autoClearDepth=f,l.autoClearStencil=g,t.background=_,e>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,e)),this._applyPMREM(c),c}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=Qm(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Km(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(Jm,Qu(t))}_fromTexture(t,e){t.mapping===or||t.mapping===ro?this._setSize(t.image.length===0?Jm:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=jm(t,!1,!1),n=Math.log2(t)-iS;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=jm(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===or||t.mapping===ro?(this._cubemapMaterial===null&&(this._cubemapMaterial=Qm()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Km()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=lS(),this._integrationMaterial=cS());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/vg);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-rS)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(e)+.5*Math.log2(6/(yg*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=hS());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function jm(i,t,e){return new ma(i,{minFilter:ds,generateMipmaps:t,type:Ii,colorSpace:Oo,depthBuffer:e})}function ga(i,t,e){return new Wi({name:i,uniforms:t,vertexShader:ue.cube_vert,fragmentShader:e,side:In,blending:sr,depthTest:!1,depthWrite:!1})}function lS(){return ga("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${yg}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function cS(){return ga("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:vg}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function hS(){return ga("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${sS}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function Km(){return ga("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function Qm(){return ga("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function uS(i){let t=new WeakMap,e=new WeakMap,n=null;function s(d,f=!1){return d==null?null:f?o(d):r(d)}function r(d){if(d&&d.isTexture){let f=d.mapping;if(f===Kl||f===Ql)if(t.has(d)){let g=t.get(d).texture;return a(g,d.mapping)}else{let g=d.image;if(g&&g.height>0){let _=new ma(g.height);return _.fromEquirectangularTexture(i,d),t.set(d,_),d.addEventListener("dispose",c),a(_.texture,d.mapping)}else return null}}return d}function o(d){if(d&&d.isTexture&&d.isPMREMTexture!==!0){let f=d.mapping,g=f===Kl||f===Ql,_=f===or||f===ro;if(g||_){let p=e.get(d),m=p!==void 0?p.texture.pmremVersion:0;if(d.isRenderTargetTexture&&d.pmremVersion!==m)return n===null&&(n=new zc(i)),p=g?n.fromEquirectangular(d,p):n.fromCubemap(d,p),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),p.texture;if(p!==void 0)return p.texture;{let v=d.image;return g&&v&&v.height>0||_&&v&&l(v)?(n===null&&(n=new zc(i)),p=g?n.fromEquirectangular(d):n.fromCubemap(d),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),d.addEventListener("dispose",h),p.texture):null}}}return d}function a(d,f){return f===Kl?d.mapping=or:f===Ql&&(d.mapping=ro),d}function l(d){let f=0,g=6;for(let _=0;_<g;_++)d[_]!==void 0&&f++;return f===g}function c(d){let f=d.target;f.removeEventListener("dispose",c);let g=t.get(f);g!==void 0&&(t.delete(f),g.dispose())}function h(d){let f=d.target;f.removeEventListener("dispose",h);let g=e.get(f);g!==void 0&&(e.delete(f),g.dispose())}function u(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:u}}function dS(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&Do("WebGLRenderer: "+n+" extension not supported."),s}}}function fS(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(g=>delete s[g]);function a(g){l(g.target)}function l(g){g.index!==null&&t.remove(g.index);for(let p in g.attributes)t.remove(g.attributes[p]);g.removeEventListener("dispose",a),delete s[g.id],o.unregister(g);let _=r.get(g);_&&(t.remove(_),r.delete(g)),n.releaseStatesOfGeometry(g),g.isInstancedBufferGeometry===!0&&delete g._maxInstanceCount,e.memory.geometries--}function c(g,_){return s[_.id]!==void 0||(_.addEventListener("dispose",a),s[_.id]=new WeakRef(_),o.register(_,_.id,_),e.memory.geometries++),_}function h(g){let _=g.attributes;for(let p in _)t.update(_[p],i.ARRAY_BUFFER)}function u(g){let _=g.index,p=g.attributes.position,m=0;if(p===void 0)return;let v=_!==null?_.array.length:p.array.length/3-1,A=p.count>=65535?Wo:Ho,M=new A(Math.ceil(v/3)*6,1),R=M.array;if(_!==null){let x=_.array;m=_.version;for(let b=0,k=0;b<v;b+=3){let N=x[b+0],L=x[b+1],G=x[b+2];R[k++]=N,R[k++]=L,R[k++]=L,R[k++]=G,R[k++]=G,R[k++]=N}}else{m=p.version;for(let x=0,b=0;x<v;x+=3){let k=x+0,N=x+1,L=x+2;R[b++]=k,R[b++]=N,R[b++]=N,R[b++]=L,R[b++]=L,R[b++]=k}}M.version=m;let w=r.get(g);w&&t.remove(w),r.set(g,M)}function d(g){let _=r.get(g);if(_){let p=g.index;p!==null&&_.version<p.version&&u(g)}else u(g);return r.get(g)}function f(){for(let g in s){let _=s[g].deref();_!==void 0&&l(_)}}return{get:c,update:h,getWireframeAttribute:d,dispose:f}}function pS(i,t,e){let n;function s(u){n=u}let r,o;function a(u){r=u.type,o=u.bytesPerElement}function l(u,d){i.drawElements(n,d,r,u*o),e.update(d,n,1)}function c(u,d,f){f!==0&&(i.drawElementsInstanced(n,d,r,u*o,f),e.update(d,n,f))}function h(u,d,f){if(f===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,d,0,r,u,0,f);let _=0;for(let p=0;p<f;p++)_+=d[p];e.update(_,n,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function mS(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:ee("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function gS(i,t,e){let n=new WeakMap,s=new $e;function r(o,a,l){let c=o.morphTargetInfluences,h=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,u=h!==void 0?h.length:0,d=n.get(a);if(d===void 0||d.count!==u){let k=function(){x.dispose(),n.delete(a),a.removeEventListener("dispose",k)};d!==void 0&&d.texture.dispose();let f=a.morphAttributes.position!==void 0,g=a.morphAttributes.normal!==void 0,_=a.morphAttributes.color!==void 0,p=a.morphAttributes.position||[],m=a.morphAttributes.normal||[],v=a.morphAttributes.color||[],A=0;f===!0&&(A=1),g===!0&&(A=2),_===!0&&(A=3);let M=a.attributes.position.count*A,R=1;M>t.maxTextureSize&&(R=Math.ceil(M/t.maxTextureSize),M=t.maxTextureSize);let w=new Float32Array(M*R*4*u),x=new zo(w,M,R,u);x.type=Pi,x.needsUpdate=!0;let b=A*4;for(let N=0;N<u;N++){let L=p[N],G=m[N],U=v[N],C=M*R*4*N;for(let B=0;B<L.count;B++){let X=B*b;f===!0&&(s.fromBufferAttribute(L,B),w[C+X+0]=s.x,w[C+X+1]=s.y,w[C+X+2]=s.z,w[C+X+3]=0),g===!0&&(s.fromBufferAttribute(G,B),w[C+X+4]=s.x,w[C+X+5]=s.y,w[C+X+6]=s.z,w[C+X+7]=0),_===!0&&(s.fromBufferAttribute(U,B),w[C+X+8]=s.x,w[C+X+9]=s.y,w[C+X+10]=s.z,w[C+X+11]=U.itemSize===4?s.w:1)}}d={count:u,texture:x,size:new ne(M,R)},n.set(a,d),a.addEventListener("dispose",k)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let f=0;for(let _=0;_<c.length;_++)f+=c[_];let g=a.morphTargetsRelative?1:1-f;l.getUniforms().setValue(i,"morphTargetBaseInfluence",g),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",d.texture,e),l.getUniforms().setValue(i,"morphTargetsTextureSize",d.size)}return{update:r}}function _S(i,t,e,n,s){let r=new WeakMap;function o(c){let h=s.render.frame,u=c.geometry,d=t.get(c,u);if(r.get(d)!==h&&(t.update(d),r.set(d,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(e.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&e.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let f=c.skeleton;r.get(f)!==h&&(f.update(),r.set(f,h))}return d}function a(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),n.releaseStatesOfObject(h),e.remove(h.instanceMatrix),h.instanceColor!==null&&e.remove(h.instanceColor)}return{update:o,dispose:a}}var xS={[Lu]:"LINEAR_TONE_MAPPING",[Du]:"REINHARD_TONE_MAPPING",[Nu]:"CINEON_TONE_MAPPING",[Uu]:"ACES_FILMIC_TONE_MAPPING",[Ou]:"AGX_TONE_MAPPING",[Bu]:"NEUTRAL_TONE_MAPPING",[Fu]:"CUSTOM_TONE_MAPPING"};function yS(i,t,e,n,s,r){let o=new ci(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,h=new On;h.setAttribute("position",new Pn([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new Pn([0,2,0,0,2,0],2));let u=new Fl({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),d=new Rn(h,u),f=new ea(-1,1,1,-1,0,1),g=null,_=null,p=!1,m,v=null,A=[],M=!1;this.setSize=function(R,w){o.setSize(R,w),a!==null&&a.setSize(R,w),l!==null&&l.setSize(R,w);for(let x=0;x<A.length;x++){let b=A[x];b.setSize&&b.setSize(R,w)}},this.setEffects=function(R){A=R,M=A.length>0&&A[0].isRenderPass===!0;let w=o.width,x=o.height;A.length>0&&a===null&&(a=new ci(w,x,{type:Ii,depthBuffer:!1,stencilBuffer:!1}),l=new ci(w,x,{type:Ii,depthBuffer:!1,stencilBuffer:!1}));let b=s===!0&&A.some(k=>k.needsDepthTexture===!0);b!==(o.depthTexture!==null)&&(b===!0&&c===null&&(c=new us(w,x),r===!0&&(c.format=fs,c.type=ar)),o.dispose(),o.depthTexture=b?c:null,o.resolveDepthBuffer=b,o.storeMultisampledDepthBuffer=b);for(let k=0;k<A.length;k++){let N=A[k];N.setSize&&N.setSize(w,x),b&&N.needsDepthTexture===!0&&N.setDepthTexture&&N.setDepthTexture(c)}},this.begin=function(R,w){if(p||R.toneMapping===Xi&&A.length===0)return!1;if(v=w,w!==null){let x=w.width,b=w.height;(o.width!==x||o.height!==b)&&this.setSize(x,b)}return M===!1&&R.setRenderTarget(o),m=R.toneMapping,R.toneMapping=Xi,!0},this.hasRenderPass=function(){return M},this.end=function(R,w){R.toneMapping=m,p=!0;let x=o,b=a;for(let k=0;k<A.length;k++){let N=A[k];N.enabled!==!1&&(N.render(R,b,x,w),N.needsSwap!==!1&&(x=b,b=b===a?l:a))}if(g!==R.outputColorSpace||_!==R.toneMapping){g=R.outputColorSpace,_=R.toneMapping,u.defines={},ye.getTransfer(g)===Re&&(u.defines.SRGB_TRANSFER="");let k=xS[_];k&&(u.defines[k]=""),u.needsUpdate=!0}u.uniforms.tDiffuse.value=x.texture,R.setRenderTarget(v),R.render(d,f),v=null,p=!1},this.isCompositing=function(){return p},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),h.dispose(),u.dispose()}}var Mg=new Zn,Sg=new us(1,1),bg=new Yo(1),wg=new zo,Eg=new Il,Tg=new $o,tg=[],eg=[],ng=new Float32Array(16),ig=new Float32Array(9),sg=new Float32Array(4);function co(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=tg[s];if(r===void 0&&(r=new Float32Array(s),tg[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function _n(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function xn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function Gc(i,t){let e=eg[t];e===void 0&&(e=new Int32Array(t),eg[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function vS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function MS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(_n(e,t))return;i.uniform2fv(this.addr,t),xn(e,t)}}function SS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(_n(e,t))return;i.uniform3fv(this.addr,t),xn(e,t)}}function bS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(_n(e,t))return;i.uniform4fv(this.addr,t),xn(e,t)}}function wS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(_n(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),xn(e,t)}else{if(_n(e,n))return;sg.set(n),i.uniformMatrix2fv(this.addr,!1,sg),xn(e,n)}}function ES(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(_n(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),xn(e,t)}else{if(_n(e,n))return;ig.set(n),i.uniformMatrix3fv(this.addr,!1,ig),xn(e,n)}}function TS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(_n(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),xn(e,t)}else{if(_n(e,n))return;ng.set(n),i.uniformMatrix4fv(this.addr,!1,ng),xn(e,n)}}function AS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function RS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(_n(e,t))return;i.uniform2iv(this.addr,t),xn(e,t)}}function CS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(_n(e,t))return;i.uniform3iv(this.addr,t),xn(e,t)}}function PS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(_n(e,t))return;i.uniform4iv(this.addr,t),xn(e,t)}}function IS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function LS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(_n(e,t))return;i.uniform2uiv(this.addr,t),xn(e,t)}}function DS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(_n(e,t))return;i.uniform3uiv(this.addr,t),xn(e,t)}}function NS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(_n(e,t))return;i.uniform4uiv(this.addr,t),xn(e,t)}}function Hc(i){return i.version===0&&(i.compareFunction=Zu,i.needsUpdate=!0),i}function US(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=Hc(Sg):r=Mg,e.setTexture2D(t||r,s)}function FS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||Eg,s)}function OS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=Hc(bg):r=Tg,e.setTextureCube(t||r,s)}function BS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||wg,s)}function kS(i){switch(i){case 5126:return vS;case 35664:return MS;case 35665:return SS;case 35666:return bS;case 35674:return wS;case 35675:return ES;case 35676:return TS;case 5124:case 35670:return AS;case 35667:case 35671:return RS;case 35668:case 35672:return CS;case 35669:case 35673:return PS;case 5125:return IS;case 36294:return LS;case 36295:return DS;case 36296:return NS;case 35678:case 36198:case 36298:case 36306:case 35682:return US;case 35679:case 36299:case 36307:return FS;case 35680:case 36300:case 36308:case 36293:return OS;case 36289:case 36303:case 36311:case 36292:return BS}}function zS(i,t){i.uniform1fv(this.addr,t)}function VS(i,t){let e=co(t,this.size,2);i.uniform2fv(this.addr,e)}function GS(i,t){let e=co(t,this.size,3);i.uniform3fv(this.addr,e)}function HS(i,t){let e=co(t,this.size,4);i.uniform4fv(this.addr,e)}function WS(i,t){let e=co(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function XS(i,t){let e=co(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function qS(i,t){let e=co(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function $S(i,t){i.uniform1iv(this.addr,t)}function YS(i,t){i.uniform2iv(this.addr,t)}function ZS(i,t){i.uniform3iv(this.addr,t)}function JS(i,t){i.uniform4iv(this.addr,t)}function jS(i,t){i.uniform1uiv(this.addr,t)}function KS(i,t){i.uniform2uiv(this.addr,t)}function QS(i,t){i.uniform3uiv(this.addr,t)}function tb(i,t){i.uniform4uiv(this.addr,t)}function eb(i,t,e){let n=this.cache,s=t.length,r=Gc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=Hc(Sg):o=Mg;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function nb(i,t,e){let n=this.cache,s=t.length,r=Gc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||Eg,r[o])}function ib(i,t,e){let n=this.cache,s=t.length,r=Gc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=Hc(bg):o=Tg;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function sb(i,t,e){let n=this.cache,s=t.length,r=Gc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||wg,r[o])}function rb(i){switch(i){case 5126:return zS;case 35664:return VS;case 35665:return GS;case 35666:return HS;case 35674:return WS;case 35675:return XS;case 35676:return qS;case 5124:case 35670:return $S;case 35667:case 35671:return YS;case 35668:case 35672:return ZS;case 35669:case 35673:return JS;case 5125:return jS;case 36294:return KS;case 36295:return QS;case 36296:return tb;case 35678:case 36198:case 36298:case 36306:case 35682:return eb;case 35679:case 36299:case 36307:return nb;case 35680:case 36300:case 36308:case 36293:return ib;case 36289:case 36303:case 36311:case 36292:return sb}}var ld=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=kS(e.type)}},cd=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=rb(e.type)}},hd=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},od=/(\w+)(\])?(\[|\.)?/g;function rg(i,t){i.seq.push(t),i.map[t.id]=t}function ob(i,t,e){let n=i.name,s=n.length;for(od.lastIndex=0;;){let r=od.exec(n),o=od.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){rg(e,c===void 0?new ld(a,i,t):new cd(a,i,t));break}else{let u=e.map[a];u===void 0&&(u=new hd(a),rg(e,u)),e=u}}}var lo=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),l=t.getUniformLocation(e,a.name);ob(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],l=n[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function og(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var ab=37297,lb=0;function cb(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var ag=new ie;function hb(i){ye._getMatrix(ag,ye.workingColorSpace,i);let t=`mat3( ${ag.elements.map(e=>e.toFixed(4))} )`;switch(ye.getTransfer(i)){case Bo:return[t,"LinearTransferOETF"];case Re:return[t,"sRGBTransferOETF"];default:return Yt("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function lg(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+cb(i.getShaderSource(t),a)}else return r}function ub(i,t){let e=hb(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var db={[Lu]:"Linear",[Du]:"Reinhard",[Nu]:"Cineon",[Uu]:"ACESFilmic",[Ou]:"AgX",[Bu]:"Neutral",[Fu]:"Custom"};function fb(i,t){let e=db[t];return e===void 0?(Yt("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var kc=new W;function pb(){ye.getLuminanceCoefficients(kc);let i=kc.x.toFixed(4),t=kc.y.toFixed(4),e=kc.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function mb(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(pa).join(`
`)}function gb(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function _b(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function pa(i){return i!==""}function cg(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function hg(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var xb=/^[ \t]*#include +<([\w\d./]+)>/gm;function ud(i){return i.replace(xb,yb)}function yb(i,t){let e=ue[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return ud(e)}var vb=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function ug(i){return i.replace(vb,Mb)}function Mb(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function dg(i){let t=`precision ${i.precision} float;
	precision ${i.precision} int;
	precision ${i.precision} sampler2D;
	precision ${i.precision} samplerCube;
	precision ${i.precision} sampler3D;
	precision ${i.precision} sampler2DArray;
	precision ${i.precision} sampler2DShadow;
	precision ${i.precision} samplerCubeShadow;
	precision ${i.precision} sampler2DArrayShadow;
	precision ${i.precision} isampler2D;
	precision ${i.precision} isampler3D;
	precision ${i.precision} isamplerCube;
	precision ${i.precision} isampler2DArray;
	precision ${i.precision} usampler2D;
	precision ${i.precision} usampler3D;
	precision ${i.precision} usamplerCube;
	precision ${i.precision} usampler2DArray;
	`;return i.precision==="highp"?t+=`
#define HIGH_PRECISION`:i.precision==="mediump"?t+=`
#define MEDIUM_PRECISION`:i.precision==="lowp"&&(t+=`
#define LOW_PRECISION`),t}var Sb={[ra]:"SHADOWMAP_TYPE_PCF",[io]:"SHADOWMAP_TYPE_VSM"};function bb(i){return Sb[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var wb={[ro]:"ENVMAP_MODE_REFRACTION"};function Eb(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":wb[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var Tb={[jl]:"ENVMAP_BLENDING_MULTIPLY",[Rm]:"ENVMAP_BLENDING_MIX",[Cm]:"ENVMAP_BLENDING_ADD"};function Ab(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":Tb[i.combine]||"ENVMAP_BLENDING_NONE"}function Rb(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,l=bb(e),c=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=Eb(e),u=Ab(e),d=mb(e),f=gb(r),g=s.createProgram(),_,p,m=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(_=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(pa).join(`
`),_.length>0&&(_+=`
`),p=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(pa).join(`
`),p.length>0&&(p+=`
`)):(_=[dg(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+h:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(pa).join(`
`),p=[dg(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+c:"",e.envMap?"#define "+h:"",e.envMap?"#define "+u:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==Xi?"#define TONE_MAPPING":"",e.toneMapping!==Xi?ue.tonemapping_pars_fragment:"",e.toneMapping!==Xi?fb("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",ue.colorspace_pars_fragment,ub("linearToOutputTexel",e.outputColorSpace),pb(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(pa).join(`
`)),o=ud(o),o=cg(o,e),o=hg(o,e),a=ud(a),a=cg(a,e),a=hg(a,e),o=ug(o),a=ug(a),e.isRawShaderMaterial!==!0&&(m=`#version 300 es
`,_=[d,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+_,p=["#define varying in",e.glslVersion===Ju?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===Ju?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+p);let v=m+_+o,A=m+p+a,M=og(s,s.VERTEX_SHADER,v),R=og(s,s.FRAGMENT_SHADER,A);s.attachShader(g,M),s.attachShader(g,R),e.index0AttributeName!==void 0?s.bindAttribLocation(g,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(g,0,"position"),s.linkProgram(g);function w(N){if(i.debug.checkShaderErrors){let L=s.getProgramInfoLog(g)||"",G=s.getShaderInfoLog(M)||"",U=s.getShaderInfoLog(R)||"",C=L.trim(),B=G.trim(),X=U.trim(),z=!0,ot=!0;if(s.getProgramParameter(g,s.LINK_STATUS)===!1)if(z=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,g,M,R);else{let $=lg(s,M,"vertex"),j=lg(s,R,"fragment");ee("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(g,s.VALIDATE_STATUS)+`

Material Name: `+N.name+`
Material Type: `+N.type+`

Program Info Log: `+C+`
`+$+`
`+j)}else C!==""?Yt("WebGLProgram: Program Info Log:",C):(B===""||X==="")&&(ot=!1);ot&&(N.diagnostics={runnable:z,programLog:C,vertexShader:{log:B,prefix:_},fragmentShader:{log:X,prefix:p}})}s.deleteShader(M),s.deleteShader(R),x=new lo(s,g),b=_b(s,g)}let x;this.getUniforms=function(){return x===void 0&&w(this),x};let b;this.getAttributes=function(){return b===void 0&&w(this),b};let k=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return k===!1&&(k=s.getProgramParameter(g,ab)),k},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(g),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=lb++,this.cacheKey=t,this.usedTimes=1,this.program=g,this.vertexShader=M,this.fragmentShader=R,this}var Cb=0,dd=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new fd(t),e.set(t,n)),n}},fd=class{constructor(t){this.id=Cb++,this.code=t,this.usedTimes=0}};function Pb(i){return i===ks||i===ua||i===da}function Ib(i,t,e,n,s,r){let o=new Vo,a=new dd,l=new Set,c=[],h=new Map,u=n.logarithmicDepthBuffer,d={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(x){return l.add(x),x===0?"uv":`uv${x}`}function g(x,b,k,N,L,G){let U=N.fog,C=L.geometry,B=x.isMeshStandardMaterial||x.isMeshLambertMaterial||x.isMeshPhongMaterial?N.environment:null,X=x.isMeshStandardMaterial||x.isMeshLambertMaterial&&!x.envMap||x.isMeshPhongMaterial&&!x.envMap,z=t.get(x.envMap||B,X),ot=d[x.type],$=n.precision;x.precision!==null&&($=n.getMaxPrecision(x.precision),$!==x.precision&&Yt("WebGLProgram.getParameters:",x.precision,"not supported, using",$,"instead."));let j=C.morphAttributes.position||C.morphAttributes.normal||C.morphAttributes.color,tt=j!==void 0?j.length:0,pt=0;C.morphAttributes.position!==void 0&&(pt=1),C.morphAttributes.normal!==void 0&&(pt=2),C.morphAttributes.color!==void 0&&(pt=3);let ht,K,mt,lt;if(ot){let Ct=$i[ot];ht=Ct.vertexShader,K=Ct.fragmentShader}else{ht=x.vertexShader,K=x.fragmentShader;let Ct=a.getVertexShaderStage(x),le=a.getFragmentShaderStage(x);a.update(x,Ct,le),mt=Ct.id,lt=le.id}let ft=i.getRenderTarget(),_t=i.state.buffers.depth.getReversed(),Ht=L.isInstancedMesh===!0,jt=L.isBatchedMesh===!0,Vt=!!x.map,de=!!x.matcap,ce=!!z,se=ce&&z.isPMREMTexture===!0,Xe=!!x.aoMap,Oe=!!x.lightMap,sn=!!x.bumpMap&&x.wireframe===!1,Le=!!x.normalMap,vn=!!x.displacementMap,ve=!!x.emissiveMap,fn=!!x.metalnessMap,Ze=!!x.roughnessMap,rn=x.anisotropy>0,O=x.clearcoat>0,Pt=x.diffuseRoughness>0,Zt=x.dispersion>0,oe=x.retroreflectivity>0,Et=x.iridescence>0,Ne=x.sheen>0,Gt=x.transmission>0,$t=rn&&!!x.anisotropyMap,P=O&&!!x.clearcoatMap,S=O&&!!x.clearcoatNormalMap,q=O&&!!x.clearcoatRoughnessMap,dt=Pt&&!!x.diffuseRoughnessMap,at=Et&&!!x.iridescenceMap,vt=Et&&!!x.iridescenceThicknessMap,Mt=Ne&&!!x.sheenColorMap,et=Ne&&!!x.sheenRoughnessMap,it=!!x.specularMap,xt=!!x.specularColorMap,F=!!x.specularIntensityMap,rt=Gt&&!!x.transmissionMap,nt=Gt&&!!x.thicknessMap,Tt=!!x.gradientMap,yt=!!x.alphaMap,bt=x.alphaTest>0,Wt=!!x.alphaHash,Kt=!!x.extensions,ut=Xi;x.toneMapped&&(ft===null||ft.isXRRenderTarget===!0)&&(ut=i.toneMapping);let Bt=se?z.isCompressedCubeTexture?z.image[0].mipmaps:z.mipmaps:null,Qt={shaderID:ot,shaderType:x.type,shaderName:x.name,vertexShader:ht,fragmentShader:K,defines:x.defines,customVertexShaderID:mt,customFragmentShaderID:lt,isRawShaderMaterial:x.isRawShaderMaterial===!0,glslVersion:x.glslVersion,precision:$,batching:jt,batchingColor:jt&&L._colorsTexture!==null,instancing:Ht,instancingColor:Ht&&L.instanceColor!==null,instancingMorph:Ht&&L.morphTexture!==null,outputColorSpace:ft===null?i.outputColorSpace:ft.isXRRenderTarget===!0?ft.texture.colorSpace:ye.workingColorSpace,alphaToCoverage:!!x.alphaToCoverage,map:Vt,matcap:de,envMap:ce,envMapMode:ce&&z.mapping,envMapPMREM:se,envMapMaxLod:se?Bt.length-1:null,envMapSize:se?Bt[0].width:null,aoMap:Xe,lightMap:Oe,bumpMap:sn,normalMap:Le,displacementMap:vn,emissiveMap:ve,normalMapObjectSpace:Le&&x.normalMapType===Lm,normalMapTangentSpace:Le&&x.normalMapType===Oc,packedNormalMap:Le&&x.normalMapType===Oc&&Pb(x.normalMap.format),metalnessMap:fn,roughnessMap:Ze,anisotropy:rn,anisotropyMap:$t,clearcoat:O,clearcoatMap:P,clearcoatNormalMap:S,clearcoatRoughnessMap:q,diffuseRoughness:Pt,diffuseRoughnessMap:dt,dispersion:Zt,retroreflection:oe,iridescence:Et,iridescenceMap:at,iridescenceThicknessMap:vt,sheen:Ne,sheenColorMap:Mt,sheenRoughnessMap:et,specularMap:it,specularColorMap:xt,specularIntensityMap:F,transmission:Gt,transmissionMap:rt,thicknessMap:nt,gradientMap:Tt,opaque:x.transparent===!1&&x.blending===so&&x.alphaToCoverage===!1,alphaMap:yt,alphaTest:bt,alphaHash:Wt,combine:x.combine,mapUv:Vt&&f(x.map.channel),aoMapUv:Xe&&f(x.aoMap.channel),lightMapUv:Oe&&f(x.lightMap.channel),bumpMapUv:sn&&f(x.bumpMap.channel),normalMapUv:Le&&f(x.normalMap.channel),displacementMapUv:vn&&f(x.displacementMap.channel),emissiveMapUv:ve&&f(x.emissiveMap.channel),metalnessMapUv:fn&&f(x.metalnessMap.channel),roughnessMapUv:Ze&&f(x.roughnessMap.channel),anisotropyMapUv:$t&&f(x.anisotropyMap.channel),clearcoatMapUv:P&&f(x.clearcoatMap.channel),clearcoatNormalMapUv:S&&f(x.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:q&&f(x.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:dt&&f(x.diffuseRoughnessMap.channel),iridescenceMapUv:at&&f(x.iridescenceMap.channel),iridescenceThicknessMapUv:vt&&f(x.iridescenceThicknessMap.channel),sheenColorMapUv:Mt&&f(x.sheenColorMap.channel),sheenRoughnessMapUv:et&&f(x.sheenRoughnessMap.channel),specularMapUv:it&&f(x.specularMap.channel),specularColorMapUv:xt&&f(x.specularColorMap.channel),specularIntensityMapUv:F&&f(x.specularIntensityMap.channel),transmissionMapUv:rt&&f(x.transmissionMap.channel),thicknessMapUv:nt&&f(x.thicknessMap.channel),alphaMapUv:yt&&f(x.alphaMap.channel),vertexTangents:!!C.attributes.tangent&&(Le||rn),vertexNormals:!!C.attributes.normal,vertexColors:x.vertexColors,vertexAlphas:x.vertexColors===!0&&!!C.attributes.color&&C.attributes.color.itemSize===4,pointsUvs:L.isPoints===!0&&!!C.attributes.uv&&(Vt||yt),fog:!!U,useFog:x.fog===!0,fogExp2:!!U&&U.isFogExp2,flatShading:x.wireframe===!1&&(x.flatShading===!0||C.attributes.normal===void 0&&Le===!1&&(x.isMeshLambertMaterial||x.isMeshPhongMaterial||x.isMeshStandardMaterial||x.isMeshPhysicalMaterial)),sizeAttenuation:x.sizeAttenuation===!0,logarithmicDepthBuffer:u,reversedDepthBuffer:_t,skinning:L.isSkinnedMesh===!0,hasPositionAttribute:C.attributes.position!==void 0,morphTargets:C.morphAttributes.position!==void 0,morphNormals:C.morphAttributes.normal!==void 0,morphColors:C.morphAttributes.color!==void 0,morphTargetsCount:tt,morphTextureStride:pt,numSunLights:b.sun.length,numDirLights:b.directional.length,numPointLights:b.point.length,numSpotLights:b.spot.length,numSpotLightMaps:b.spotLightMap.length,numRectAreaLights:b.rectArea.length,numHemiLights:b.hemi.length,numSunLightShadows:b.sunShadowMap.length,numDirLightShadows:b.directionalShadowMap.length,numPointLightShadows:b.pointShadowMap.length,numSpotLightShadows:b.spotShadowMap.length,numSpotLightShadowsWithMaps:b.numSpotLightShadowsWithMaps,numLightProbes:b.numLightProbes,numLightProbeGrids:G.filter(Ct=>Ct.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:x.dithering,shadowMapEnabled:i.shadowMap.enabled&&k.length>0,shadowMapType:i.shadowMap.type,toneMapping:ut,decodeVideoTexture:Vt&&x.map.isVideoTexture===!0&&ye.getTransfer(x.map.colorSpace)===Re,decodeVideoTextureEmissive:ve&&x.emissiveMap.isVideoTexture===!0&&ye.getTransfer(x.emissiveMap.colorSpace)===Re,premultipliedAlpha:x.premultipliedAlpha,doubleSided:x.side===Yn,flipSided:x.side===In,useDepthPacking:x.depthPacking>=0,depthPacking:x.depthPacking||0,index0AttributeName:x.index0AttributeName,extensionClipCullDistance:Kt&&x.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Kt&&x.extensions.multiDraw===!0||jt)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:x.customProgramCacheKey()};return Qt.vertexUv1s=l.has(1),Qt.vertexUv2s=l.has(2),Qt.vertexUv3s=l.has(3),l.clear(),Qt}function _(x){let b=[];if(x.shaderID?b.push(x.shaderID):(b.push(x.customVertexShaderID),b.push(x.customFragmentShaderID)),x.defines!==void 0)for(let k in x.defines)b.push(k),b.push(x.defines[k]);return x.isRawShaderMaterial===!1&&(p(b,x),m(b,x),b.push(i.outputColorSpace)),b.push(x.customProgramCacheKey),b.join()}function p(x,b){x.push(b.precision),x.push(b.outputColorSpace),x.push(b.envMapMode),x.push(b.envMapPMREM),x.push(b.envMapMaxLod),x.push(b.envMapSize),x.push(b.mapUv),x.push(b.alphaMapUv),x.push(b.lightMapUv),x.push(b.aoMapUv),x.push(b.bumpMapUv),x.push(b.normalMapUv),x.push(b.displacementMapUv),x.push(b.emissiveMapUv),x.push(b.metalnessMapUv),x.push(b.roughnessMapUv),x.push(b.anisotropyMapUv),x.push(b.clearcoatMapUv),x.push(b.clearcoatNormalMapUv),x.push(b.clearcoatRoughnessMapUv),x.push(b.diffuseRoughnessMapUv),x.push(b.iridescenceMapUv),x.push(b.iridescenceThicknessMapUv),x.push(b.sheenColorMapUv),x.push(b.sheenRoughnessMapUv),x.push(b.specularMapUv),x.push(b.specularColorMapUv),x.push(b.specularIntensityMapUv),x.push(b.transmissionMapUv),x.push(b.thicknessMapUv),x.push(b.combine),x.push(b.fogExp2),x.push(b.sizeAttenuation),x.push(b.morphTargetsCount),x.push(b.numSunLights),x.push(b.numDirLights),x.push(b.numPointLights),x.push(b.numSpotLights),x.push(b.numSpotLightMaps),x.push(b.numHemiLights),x.push(b.numRectAreaLights),x.push(b.numSunLightShadows),x.push(b.numDirLightShadows),x.push(b.numPointLightShadows),x.push(b.numSpotLightShadows),x.push(b.numSpotLightShadowsWithMaps),x.push(b.numLightProbes),x.push(b.numLightProbeGrids),x.push(b.shadowMapType),x.push(b.toneMapping),x.push(b.numClippingPlanes),x.push(b.numClipIntersection),x.push(b.depthPacking)}function m(x,b){o.disableAll(),b.instancing&&o.enable(0),b.instancingColor&&o.enable(1),b.instancingMorph&&o.enable(2),b.matcap&&o.enable(3),b.envMap&&o.enable(4),b.normalMapObjectSpace&&o.enable(5),b.normalMapTangentSpace&&o.enable(6),b.clearcoat&&o.enable(7),b.iridescence&&o.enable(8),b.alphaTest&&o.enable(9),b.vertexColors&&o.enable(10),b.vertexAlphas&&o.enable(11),b.vertexUv1s&&o.enable(12),b.vertexUv2s&&o.enable(13),b.vertexUv3s&&o.enable(14),b.vertexTangents&&o.enable(15),b.anisotropy&&o.enable(16),b.alphaHash&&o.enable(17),b.batching&&o.enable(18),b.dispersion&&o.enable(19),b.retroreflection&&o.enable(24),b.diffuseRoughness&&o.enable(25),b.batchingColor&&o.enable(20),b.gradientMap&&o.enable(21),b.packedNormalMap&&o.enable(22),b.vertexNormals&&o.enable(23),x.push(o.mask),o.disableAll(),b.fog&&o.enable(0),b.useFog&&o.enable(1),b.flatShading&&o.enable(2),b.logarithmicDepthBuffer&&o.enable(3),b.reversedDepthBuffer&&o.enable(4),b.skinning&&o.enable(5),b.morphTargets&&o.enable(6),b.morphNormals&&o.enable(7),b.morphColors&&o.enable(8),b.premultipliedAlpha&&o.enable(9),b.shadowMapEnabled&&o.enable(10),b.doubleSided&&o.enable(11),b.flipSided&&o.enable(12),b.useDepthPacking&&o.enable(13),b.dithering&&o.enable(14),b.transmission&&o.enable(15),b.sheen&&o.enable(16),b.opaque&&o.enable(17),b.pointsUvs&&o.enable(18),b.decodeVideoTexture&&o.enable(19),b.decodeVideoTextureEmissive&&o.enable(20),b.alphaToCoverage&&o.enable(21),b.numLightProbeGrids>0&&o.enable(22),b.hasPositionAttribute&&o.enable(23),x.push(o.mask)}function v(x){let b=d[x.type],k;if(b){let N=$i[b];k=$m.clone(N.uniforms)}else k=x.uniforms;return k}function A(x,b){let k=h.get(b);return k!==void 0?++k.usedTimes:(k=new Rb(i,b,x,s),c.push(k),h.set(b,k)),k}function M(x){if(--x.usedTimes===0){let b=c.indexOf(x);c[b]=c[c.length-1],c.pop(),h.delete(x.cacheKey),x.destroy()}}function R(x){a.remove(x)}function w(){a.dispose()}return{getParameters:g,getProgramCacheKey:_,getUniforms:v,acquireProgram:A,releaseProgram:M,releaseShaderCache:R,programs:c,dispose:w}}function Lb(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,l){i.get(o)[a]=l}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function Db(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function fg(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function pg(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(d){let f=0;return d.isInstancedMesh&&(f+=2),d.isSkinnedMesh&&(f+=1),f}function a(d,f,g,_,p,m){let v=i[t];return v===void 0?(v={id:d.id,object:d,geometry:f,material:g,materialVariant:o(d),groupOrder:_,renderOrder:d.renderOrder,z:p,group:m},i[t]=v):(v.id=d.id,v.object=d,v.geometry=f,v.material=g,v.materialVariant=o(d),v.groupOrder=_,v.renderOrder=d.renderOrder,v.z=p,v.group=m),t++,v}function l(d,f,g,_,p,m,v){v.reversedDepth===!0&&(p=-p);let A=a(d,f,g,_,p,m);g.transmission>0?n.push(A):g.transparent===!0?s.push(A):e.push(A)}function c(d,f,g,_,p,m){let v=a(d,f,g,_,p,m);g.transmission>0?n.unshift(v):g.transparent===!0?s.unshift(v):e.unshift(v)}function h(d,f){e.length>1&&e.sort(d||Db),n.length>1&&n.sort(f||fg),s.length>1&&s.sort(f||fg)}function u(){for(let d=t,f=i.length;d<f;d++){let g=i[d];if(g.id===null)break;g.id=null,g.object=null,g.geometry=null,g.material=null,g.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:u,sort:h}}function Nb(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new pg,i.set(n,[o])):s>=r.length?(o=new pg,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function Ub(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new W,color:new ae};break;case"SpotLight":e={position:new W,direction:new W,color:new ae,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new W,color:new ae,distance:0,decay:0};break;case"HemisphereLight":e={direction:new W,skyColor:new ae,groundColor:new ae};break;case"RectAreaLight":e={color:new ae,position:new W,halfWidth:new W,halfHeight:new W};break}return i[t.id]=e,e}}}function Fb(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ne};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ne};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ne,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var Ob=0;function Bb(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function kb(i){let t=new Ub,e=Fb(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new W);let s=new W,r=new We,o=new We;function a(c){let h=0,u=0,d=0;for(let G=0;G<9;G++)n.probe[G].set(0,0,0);let f=0,g=0,_=0,p=0,m=0,v=0,A=0,M=0,R=0,w=0,x=0,b=0,k=0,N=0;c.sort(Bb);for(let G=0,U=c.length;G<U;G++){let C=c[G],B=C.color,X=C.intensity,z=C.distance,ot=null;if(C.shadow&&C.shadow.map&&(C.shadow.map.texture.format===ks?ot=C.shadow.map.texture:ot=C.shadow.map.depthTexture||C.shadow.map.texture),C.isAmbientLight)h+=B.r*X,u+=B.g*X,d+=B.b*X;else if(C.isLightProbe){for(let $=0;$<9;$++)n.probe[$].addScaledVector(C.sh.coefficients[$],X);N++}else if(C.isSunLight){let $=t.get(C);if($.color.copy(C.color).multiplyScalar(C.intensity),C.castShadow){let j=C.shadow,tt=e.get(C);tt.shadowIntensity=j.intensity,tt.shadowBias=j.bias,tt.shadowNormalBias=j.normalBias,tt.shadowRadius=j.radius,tt.shadowMapSize.copy(j.mapSize).multiply(j.getFrameExtents()),n.sunShadow[g]=tt,n.sunShadowMap[g]=ot;let pt=j.getViewportCount();for(let ht=0;ht<pt;ht++)n.sunShadowMatrix[_+ht]=j.getMatrix(ht),n.sunShadowCascade[_+ht]=j._cascadeData[ht];_+=pt,g++}n.sun[f]=$,f++}else if(C.isDirectionalLight){let $=t.get(C);if($.color.copy(C.color).multiplyScalar(C.intensity),C.castShadow){let j=C.shadow,tt=e.get(C);tt.shadowIntensity=j.intensity,tt.shadowBias=j.bias,tt.shadowNormalBias=j.normalBias,tt.shadowRadius=j.radius,tt.shadowMapSize=j.mapSize,n.directionalShadow[p]=tt,n.directionalShadowMap[p]=ot,n.directionalShadowMatrix[p]=C.shadow.matrix,R++}n.directional[p]=$,p++}else if(C.isSpotLight){let $=t.get(C);$.position.setFromMatrixPosition(C.matrixWorld),$.color.copy(B).multiplyScalar(X),$.distance=z,$.coneCos=Math.cos(C.angle),$.penumbraCos=Math.cos(C.angle*(1-C.penumbra)),$.decay=C.decay,n.spot[v]=$;let j=C.shadow;if(C.map&&(n.spotLightMap[b]=C.map,b++,j.updateMatrices(C),C.castShadow&&k++),n.spotLightMatrix[v]=j.matrix,C.castShadow){let tt=e.get(C);tt.shadowIntensity=j.intensity,tt.shadowBias=j.bias,tt.shadowNormalBias=j.normalBias,tt.shadowRadius=j.radius,tt.shadowMapSize=j.mapSize,n.spotShadow[v]=tt,n.spotShadowMap[v]=ot,x++}v++}else if(C.isRectAreaLight){let $=t.get(C);$.color.copy(B).multiplyScalar(X),$.halfWidth.set(C.width*.5,0,0),$.halfHeight.set(0,C.height*.5,0),n.rectArea[A]=$,A++}else if(C.isPointLight){let $=t.get(C);if($.color.copy(C.color).multiplyScalar(C.intensity),$.distance=C.distance,$.decay=C.decay,C.castShadow){let j=C.shadow,tt=e.get(C);tt.shadowIntensity=j.intensity,tt.shadowBias=j.bias,tt.shadowNormalBias=j.normalBias,tt.shadowRadius=j.radius,tt.shadowMapSize=j.mapSize,tt.shadowCameraNear=j.camera.near,tt.shadowCameraFar=j.camera.far,n.pointShadow[m]=tt,n.pointShadowMap[m]=ot,n.pointShadowMatrix[m]=C.shadow.matrix,w++}n.point[m]=$,m++}else if(C.isHemisphereLight){let $=t.get(C);$.skyColor.copy(C.color).multiplyScalar(X),$.groundColor.copy(C.groundColor).multiplyScalar(X),n.hemi[M]=$,M++}}A>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Dt.LTC_FLOAT_1,n.rectAreaLTC2=Dt.LTC_FLOAT_2):(n.rectAreaLTC1=Dt.LTC_HALF_1,n.rectAreaLTC2=Dt.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=u,n.ambient[2]=d;let L=n.hash;(L.sunLength!==f||L.directionalLength!==p||L.pointLength!==m||L.spotLength!==v||L.rectAreaLength!==A||L.hemiLength!==M||L.numSunShadows!==g||L.numDirectionalShadows!==R||L.numPointShadows!==w||L.numSpotShadows!==x||L.numSpotMaps!==b||L.numLightProbes!==N)&&(n.sun.length=f,n.directional.length=p,n.spot.length=v,n.rectArea.length=A,n.point.length=m,n.hemi.length=M,n.sunShadow.length=g,n.sunShadowMap.length=g,n.sunShadowMatrix.length=_,n.sunShadowCascade.length=_,n.directionalShadow.length=R,n.directionalShadowMap.length=R,n.directionalShadowMatrix.length=R,n.pointShadow.length=w,n.pointShadowMap.length=w,n.pointShadowMatrix.length=w,n.spotShadow.length=x,n.spotShadowMap.length=x,n.spotLightMatrix.length=x+b-k,n.spotLightMap.length=b,n.numSpotLightShadowsWithMaps=k,n.numLightProbes=N,L.sunLength=f,L.directionalLength=p,L.pointLength=m,L.spotLength=v,L.rectAreaLength=A,L.hemiLength=M,L.numSunShadows=g,L.numDirectionalShadows=R,L.numPointShadows=w,L.numSpotShadows=x,L.numSpotMaps=b,L.numLightProbes=N,n.version=Ob++)}function l(c,h){let u=0,d=0,f=0,g=0,_=0,p=0,m=h.matrixWorldInverse;for(let v=0,A=c.length;v<A;v++){let M=c[v];if(M.isSunLight){let R=n.sun[u];R.direction.setFromMatrixPosition(M.matrixWorld),R.direction.transformDirection(m),u++}else if(M.isDirectionalLight){let R=n.directional[d];R.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(m),d++}else if(M.isSpotLight){let R=n.spot[g];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(m),R.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(m),g++}else if(M.isRectAreaLight){let R=n.rectArea[_];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(m),o.identity(),r.copy(M.matrixWorld),r.premultiply(m),o.extractRotation(r),R.halfWidth.set(M.width*.5,0,0),R.halfHeight.set(0,M.height*.5,0),R.halfWidth.applyMatrix4(o),R.halfHeight.applyMatrix4(o),_++}else if(M.isPointLight){let R=n.point[f];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(m),f++}else if(M.isHemisphereLight){let R=n.hemi[p];R.direction.setFromMatrixPosition(M.matrixWorld),R.direction.transformDirection(m),p++}}}return{setup:a,setupView:l,state:n}}function mg(i){let t=new kb(i),e=[],n=[],s=[];function r(u){h.camera=u,e.length=0,n.length=0,s.length=0}function o(u){u.isLightProbeGrid?s.push(u):e.push(u)}function a(u){n.push(u)}function l(){t.setup(e),s.sort((u,d)=>u.priority-d.priority||u.id-d.id)}function c(u){t.setupView(e,u)}let h={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function zb(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new mg(i),t.set(s,[a])):r>=o.length?(a=new mg(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var Vb=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,Gb=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,Hb=[new W(1,0,0),new W(-1,0,0),new W(0,1,0),new W(0,-1,0),new W(0,0,1),new W(0,0,-1)],Wb=[new W(0,-1,0),new W(0,-1,0),new W(0,0,1),new W(0,0,-1),new W(0,-1,0),new W(0,-1,0)],gg=new We,fa=new W,ad=new W;function Xb(i,t,e){let n=new Ls,s=new ne,r=new ne,o=new $e,a=new Ol,l=new Bl,c={},h=e.maxTextureSize,u={[Ri]:In,[In]:Ri,[Yn]:Yn},d=new Wi({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new ne},radius:{value:4}},vertexShader:Vb,fragmentShader:Gb}),f=d.clone();f.defines.HORIZONTAL_PASS=1;let g=new On;g.setAttribute("position",new Un(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let _=new Rn(g,d),p=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=ra;let m=this.type;this.render=function(w,x,b){if(p.enabled===!1||p.autoUpdate===!1&&p.needsUpdate===!1||w.length===0)return;this.type===cm&&(Yt("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=ra);let k=i.getRenderTarget(),N=i.getActiveCubeFace(),L=i.getActiveMipmapLevel(),G=i.state;G.setBlending(sr),G.buffers.depth.getReversed()===!0?G.buffers.color.setClear(0,0,0,0):G.buffers.color.setClear(1,1,1,1),G.buffers.depth.setTest(!0),G.setScissorTest(!1);let U=m!==this.type;U&&x.traverse(function(C){C.material&&(Array.isArray(C.material)?C.material.forEach(B=>B.needsUpdate=!0):C.material.needsUpdate=!0)});for(let C=0,B=w.length;C<B;C++){let X=w[C],z=X.shadow;if(z===void 0){Yt("WebGLShadowMap:",X,"has no shadow.");continue}if(z.autoUpdate===!1&&z.needsUpdate===!1)continue;s.copy(z.mapSize);let ot=z.getFrameExtents();s.multiply(ot),r.copy(z.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/ot.x),s.x=r.x*ot.x,z.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/ot.y),s.y=r.y*ot.y,z.mapSize.y=r.y));let $=i.state.buffers.depth.getReversed();if(z.camera._reversedDepth=$,z.map===null||U===!0){if(z.map!==null&&(z.map.depthTexture!==null&&(z.map.depthTexture.dispose(),z.map.depthTexture=null),z.map.dispose()),this.type===io){if(X.isPointLight){Yt("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}z.map=new ci(s.x,s.y,{format:ks,type:Ii,minFilter:$n,magFilter:$n,generateMipmaps:!1}),z.map.texture.name=X.name+".shadowMap",z.map.depthTexture=new us(s.x,s.y,Pi),z.map.depthTexture.name=X.name+".shadowMapDepth",z.map.depthTexture.format=as,z.map.depthTexture.compareFunction=null,z.map.depthTexture.minFilter=An,z.map.depthTexture.magFilter=An}else X.isPointLight?(z.map=new ma(s.x),z.map.depthTexture=new Yo(s.x,Ci)):(z.map=new ci(s.x,s.y),z.map.depthTexture=new us(s.x,s.y,Ci)),z.map.depthTexture.name=X.name+".shadowMap",z.map.depthTexture.format=as,this.type===ra?(z.map.depthTexture.compareFunction=$?Yu:$u,z.map.depthTexture.minFilter=$n,z.map.depthTexture.magFilter=$n):(z.map.depthTexture.compareFunction=null,z.map.depthTexture.minFilter=An,z.map.depthTexture.magFilter=An);z.camera.updateProjectionMatrix()}z.map.isWebGLCubeRenderTarget!==!0&&(z.map.width!==s.x||z.map.height!==s.y)&&z.map.setSize(s.x,s.y);let j=z.map.isWebGLCubeRenderTarget?6:z.getViewportCount();X.isPointLight!==!0&&z.updateMatrices(X,b);let tt=(z.camera.layers.mask&4294967294)!==0?z.camera.layers:b.layers;for(let pt=0;pt<j;pt++){let ht=z.getCamera(pt);if(X.isPointLight){let K=z.camera,mt=z.matrix,lt=X.distance||K.far;lt!==K.far&&(K.far=lt,K.updateProjectionMatrix()),fa.setFromMatrixPosition(X.matrixWorld),K.position.copy(fa),ad.copy(K.position),ad.add(Hb[pt]),K.up.copy(Wb[pt]),K.lookAt(ad),K.updateMatrixWorld(),mt.makeTranslation(-fa.x,-fa.y,-fa.z),gg.multiplyMatrices(K.projectionMatrix,K.matrixWorldInverse),z._frustum.setFromProjectionMatrix(gg,K.coordinateSystem,K.reversedDepth)}if(z.map.isWebGLCubeRenderTarget)i.setRenderTarget(z.map,pt),i.clear();else{pt===0&&(i.setRenderTarget(z.map),i.clear());let K=z.getViewport(pt);o.set(r.x*K.x,r.y*K.y,r.x*K.z,r.y*K.w),G.viewport(o)}n=z.getFrustum(pt),M(x,b,ht,X,tt,this.type)}z.isPointLightShadow!==!0&&this.type===io&&v(z,b),z.needsUpdate=!1}m=this.type,p.needsUpdate=!1,i.setRenderTarget(k,N,L)};function v(w,x){let b=t.update(_);d.defines.VSM_SAMPLES!==w.blurSamples&&(d.defines.VSM_SAMPLES=w.blurSamples,f.defines.VSM_SAMPLES=w.blurSamples,d.needsUpdate=!0,f.needsUpdate=!0),w.mapPass===null?w.mapPass=new ci(s.x,s.y,{format:ks,type:Ii}):(w.mapPass.width!==w.map.width||w.mapPass.height!==w.map.height)&&w.mapPass.setSize(w.map.width,w.map.height),d.uniforms.shadow_pass.value=w.map.depthTexture,d.uniforms.resolution.value.set(w.map.width,w.map.height),d.uniforms.radius.value=w.radius,i.setRenderTarget(w.mapPass),i.clear(),i.renderBufferDirect(x,null,b,d,_,null),f.uniforms.shadow_pass.value=w.mapPass.texture,f.uniforms.resolution.value.set(w.map.width,w.map.height),f.uniforms.radius.value=w.radius,i.setRenderTarget(w.map),i.clear(),i.renderBufferDirect(x,null,b,f,_,null)}function A(w,x,b,k){let N=null,L=b.isPointLight===!0?w.customDistanceMaterial:w.customDepthMaterial;if(L!==void 0)N=L;else if(N=b.isPointLight===!0?l:a,i.localClippingEnabled&&x.clipShadows===!0&&Array.isArray(x.clippingPlanes)&&x.clippingPlanes.length!==0||x.displacementMap&&x.displacementScale!==0||x.alphaMap&&x.alphaTest>0||x.map&&x.alphaTest>0||x.alphaToCoverage===!0){let G=N.uuid,U=x.uuid,C=c[G];C===void 0&&(C={},c[G]=C);let B=C[U];B===void 0&&(B=N.clone(),C[U]=B,x.addEventListener("dispose",R)),N=B}if(N.visible=x.visible,N.wireframe=x.wireframe,k===io?N.side=x.shadowSide!==null?x.shadowSide:x.side:N.side=x.shadowSide!==null?x.shadowSide:u[x.side],N.alphaMap=x.alphaMap,N.alphaTest=x.alphaToCoverage===!0?.5:x.alphaTest,N.map=x.map,N.clipShadows=x.clipShadows,N.clippingPlanes=x.clippingPlanes,N.clipIntersection=x.clipIntersection,N.displacementMap=x.displacementMap,N.displacementScale=x.displacementScale,N.displacementBias=x.displacementBias,N.wireframeLinewidth=x.wireframeLinewidth,N.linewidth=x.linewidth,b.isPointLight===!0&&N.isMeshDistanceMaterial===!0){let G=i.properties.get(N);G.light=b}return N}function M(w,x,b,k,N,L){if(w.visible===!1)return;if(w.layers.test(N)&&(w.isMesh||w.isLine||w.isPoints)&&(w.castShadow||w.receiveShadow&&L===io)&&(!w.frustumCulled||w.intersectsFrustum(n))){w.modelViewMatrix.multiplyMatrices(b.matrixWorldInverse,w.matrixWorld);let C=t.update(w),B=w.material;if(Array.isArray(B)){let X=C.groups;for(let z=0,ot=X.length;z<ot;z++){let $=X[z],j=B[$.materialIndex];if(j&&j.visible){let tt=A(w,j,k,L);w.onBeforeShadow(i,w,x,b,C,tt,$),i.renderBufferDirect(b,null,C,tt,w,$),w.onAfterShadow(i,w,x,b,C,tt,$)}}}else if(B.visible){let X=A(w,B,k,L);w.onBeforeShadow(i,w,x,b,C,X,null),i.renderBufferDirect(b,null,C,X,w,null),w.onAfterShadow(i,w,x,b,C,X,null)}}let U=w.children;for(let C=0,B=U.length;C<B;C++)M(U[C],x,b,k,N,L)}function R(w){w.target.removeEventListener("dispose",R);for(let b in c){let k=c[b],N=w.target.uuid;N in k&&(k[N].dispose(),delete k[N])}}}function qb(i,t){function e(){let F=!1,rt=new $e,nt=null,Tt=new $e(0,0,0,0);return{setMask:function(yt){nt!==yt&&!F&&(i.colorMask(yt,yt,yt,yt),nt=yt)},setLocked:function(yt){F=yt},setClear:function(yt,bt,Wt,Kt,ut){ut===!0&&(yt*=Kt,bt*=Kt,Wt*=Kt),rt.set(yt,bt,Wt,Kt),Tt.equals(rt)===!1&&(i.clearColor(yt,bt,Wt,Kt),Tt.copy(rt))},reset:function(){F=!1,nt=null,Tt.set(-1,0,0,0)}}}function n(){let F=!1,rt=!1,nt=null,Tt=null,yt=null;return{setReversed:function(bt){if(rt!==bt){let Wt=t.get("EXT_clip_control");bt?Wt.clipControlEXT(Wt.LOWER_LEFT_EXT,Wt.ZERO_TO_ONE_EXT):Wt.clipControlEXT(Wt.LOWER_LEFT_EXT,Wt.NEGATIVE_ONE_TO_ONE_EXT),rt=bt;let Kt=yt;yt=null,this.setClear(Kt)}},getReversed:function(){return rt},setTest:function(bt){bt?_t(i.DEPTH_TEST):Ht(i.DEPTH_TEST)},setMask:function(bt){nt!==bt&&!F&&(i.depthMask(bt),nt=bt)},setFunc:function(bt){if(rt&&(bt=Hm[bt]),Tt!==bt){switch(bt){case yl:i.depthFunc(i.NEVER);break;case vl:i.depthFunc(i.ALWAYS);break;case Ml:i.depthFunc(i.LESS);break;case $r:i.depthFunc(i.LEQUAL);break;case Sl:i.depthFunc(i.EQUAL);break;case bl:i.depthFunc(i.GEQUAL);break;case wl:i.depthFunc(i.GREATER);break;case El:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}Tt=bt}},setLocked:function(bt){F=bt},setClear:function(bt){yt!==bt&&(yt=bt,rt&&(bt=1-bt),i.clearDepth(bt))},reset:function(){F=!1,nt=null,Tt=null,yt=null,rt=!1}}}function s(){let F=!1,rt=null,nt=null,Tt=null,yt=null,bt=null,Wt=null,Kt=null,ut=null;return{setTest:function(Bt){F||(Bt?_t(i.STENCIL_TEST):Ht(i.STENCIL_TEST))},setMask:function(Bt){rt!==Bt&&!F&&(i.stencilMask(Bt),rt=Bt)},setFunc:function(Bt,Qt,Ct){(nt!==Bt||Tt!==Qt||yt!==Ct)&&(i.stencilFunc(Bt,Qt,Ct),nt=Bt,Tt=Qt,yt=Ct)},setOp:function(Bt,Qt,Ct){(bt!==Bt||Wt!==Qt||Kt!==Ct)&&(i.stencilOp(Bt,Qt,Ct),bt=Bt,Wt=Qt,Kt=Ct)},setLocked:function(Bt){F=Bt},setClear:function(Bt){ut!==Bt&&(i.clearStencil(Bt),ut=Bt)},reset:function(){F=!1,rt=null,nt=null,Tt=null,yt=null,bt=null,Wt=null,Kt=null,ut=null}}}let r=new e,o=new n,a=new s,l={},c=new WeakMap,h={},u={},d={},f=new WeakMap,g=[],_=null,p=!1,m=null,v=null,A=null,M=null,R=null,w=null,x=null,b=new ae(0,0,0),k=0,N=!1,L=null,G=null,U=null,C=null,B=null,X=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),z=!1,ot=0,$=i.getParameter(i.VERSION);$.indexOf("WebGL")!==-1?(ot=parseFloat(/^WebGL (\d)/.exec($)[1]),z=ot>=1):$.indexOf("OpenGL ES")!==-1&&(ot=parseFloat(/^OpenGL ES (\d)/.exec($)[1]),z=ot>=2);let j=null,tt={},pt=i.getParameter(i.SCISSOR_BOX),ht=i.getParameter(i.VIEWPORT),K=new $e().fromArray(pt),mt=new $e().fromArray(ht);function lt(F,rt,nt,Tt){let yt=new Uint8Array(4),bt=i.createTexture();i.bindTexture(F,bt),i.texParameteri(F,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(F,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let Wt=0;Wt<nt;Wt++)F===i.TEXTURE_3D||F===i.TEXTURE_2D_ARRAY?i.texImage3D(rt,0,i.RGBA,1,1,Tt,0,i.RGBA,i.UNSIGNED_BYTE,yt):i.texImage2D(rt+Wt,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,yt);return bt}let ft={};ft[i.TEXTURE_2D]=lt(i.TEXTURE_2D,i.TEXTURE_2D,1),ft[i.TEXTURE_CUBE_MAP]=lt(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),ft[i.TEXTURE_2D_ARRAY]=lt(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),ft[i.TEXTURE_3D]=lt(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),_t(i.DEPTH_TEST),o.setFunc($r),sn(!1),Le(Tu),_t(i.CULL_FACE),Xe(sr);function _t(F){h[F]!==!0&&(i.enable(F),h[F]=!0)}function Ht(F){h[F]!==!1&&(i.disable(F),h[F]=!1)}function jt(F,rt){return d[F]!==rt?(i.bindFramebuffer(F,rt),d[F]=rt,F===i.DRAW_FRAMEBUFFER&&(d[i.FRAMEBUFFER]=rt),F===i.FRAMEBUFFER&&(d[i.DRAW_FRAMEBUFFER]=rt),!0):!1}function Vt(F,rt){let nt=g,Tt=!1;if(F){nt=f.get(rt),nt===void 0&&(nt=[],f.set(rt,nt));let yt=F.textures;if(nt.length!==yt.length||nt[0]!==i.COLOR_ATTACHMENT0){for(let bt=0,Wt=yt.length;bt<Wt;bt++)nt[bt]=i.COLOR_ATTACHMENT0+bt;nt.length=yt.length,Tt=!0}}else nt[0]!==i.BACK&&(nt[0]=i.BACK,Tt=!0);Tt&&i.drawBuffers(nt)}function de(F){return _!==F?(i.useProgram(F),_=F,!0):!1}let ce={[rr]:i.FUNC_ADD,[um]:i.FUNC_SUBTRACT,[dm]:i.FUNC_REVERSE_SUBTRACT};ce[fm]=i.MIN,ce[pm]=i.MAX;let se={[mm]:i.ZERO,[gm]:i.ONE,[_m]:i.SRC_COLOR,[Pu]:i.SRC_ALPHA,[bm]:i.SRC_ALPHA_SATURATE,[Mm]:i.DST_COLOR,[ym]:i.DST_ALPHA,[xm]:i.ONE_MINUS_SRC_COLOR,[Iu]:i.ONE_MINUS_SRC_ALPHA,[Sm]:i.ONE_MINUS_DST_COLOR,[vm]:i.ONE_MINUS_DST_ALPHA,[wm]:i.CONSTANT_COLOR,[Em]:i.ONE_MINUS_CONSTANT_COLOR,[Tm]:i.CONSTANT_ALPHA,[Am]:i.ONE_MINUS_CONSTANT_ALPHA};function Xe(F,rt,nt,Tt,yt,bt,Wt,Kt,ut,Bt){if(F===sr){p===!0&&(Ht(i.BLEND),p=!1);return}if(p===!1&&(_t(i.BLEND),p=!0),F!==hm){if(F!==m||Bt!==N){if((v!==rr||R!==rr)&&(i.blendEquation(i.FUNC_ADD),v=rr,R=rr),Bt)switch(F){case so:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Au:i.blendFunc(i.ONE,i.ONE);break;case Ru:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Cu:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:ee("WebGLState: Invalid blending: ",F);break}else switch(F){case so:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Au:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case Ru:ee("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Cu:ee("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:ee("WebGLState: Invalid blending: ",F);break}A=null,M=null,w=null,x=null,b.set(0,0,0),k=0,m=F,N=Bt}return}yt=yt||rt,bt=bt||nt,Wt=Wt||Tt,(rt!==v||yt!==R)&&(i.blendEquationSeparate(ce[rt],ce[yt]),v=rt,R=yt),(nt!==A||Tt!==M||bt!==w||Wt!==x)&&(i.blendFuncSeparate(se[nt],se[Tt],se[bt],se[Wt]),A=nt,M=Tt,w=bt,x=Wt),(Kt.equals(b)===!1||ut!==k)&&(i.blendColor(Kt.r,Kt.g,Kt.b,ut),b.copy(Kt),k=ut),m=F,N=!1}function Oe(F,rt){F.side===Yn?Ht(i.CULL_FACE):_t(i.CULL_FACE);let nt=F.side===In;rt&&(nt=!nt),sn(nt),F.blending===so&&F.transparent===!1?Xe(sr):Xe(F.blending,F.blendEquation,F.blendSrc,F.blendDst,F.blendEquationAlpha,F.blendSrcAlpha,F.blendDstAlpha,F.blendColor,F.blendAlpha,F.premultipliedAlpha),o.setFunc(F.depthFunc),o.setTest(F.depthTest),o.setMask(F.depthWrite),r.setMask(F.colorWrite);let Tt=F.stencilWrite;a.setTest(Tt),Tt&&(a.setMask(F.stencilWriteMask),a.setFunc(F.stencilFunc,F.stencilRef,F.stencilFuncMask),a.setOp(F.stencilFail,F.stencilZFail,F.stencilZPass)),ve(F.polygonOffset,F.polygonOffsetFactor,F.polygonOffsetUnits),F.alphaToCoverage===!0?_t(i.SAMPLE_ALPHA_TO_COVERAGE):Ht(i.SAMPLE_ALPHA_TO_COVERAGE)}function sn(F){L!==F&&(F?i.frontFace(i.CW):i.frontFace(i.CCW),L=F)}function Le(F){F!==am?(_t(i.CULL_FACE),F!==G&&(F===Tu?i.cullFace(i.BACK):F===lm?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):Ht(i.CULL_FACE),G=F}function vn(F){F!==U&&(z&&i.lineWidth(F),U=F)}function ve(F,rt,nt){F?(_t(i.POLYGON_OFFSET_FILL),(C!==rt||B!==nt)&&(C=rt,B=nt,o.getReversed()&&(rt=-rt,nt=-nt),i.polygonOffset(rt,nt))):Ht(i.POLYGON_OFFSET_FILL)}function fn(F){F?_t(i.SCISSOR_TEST):Ht(i.SCISSOR_TEST)}function Ze(F){F===void 0&&(F=i.TEXTURE0+X-1),j!==F&&(i.activeTexture(F),j=F)}function rn(F,rt,nt){nt===void 0&&(j===null?nt=i.TEXTURE0+X-1:nt=j);let Tt=tt[nt];Tt===void 0&&(Tt={type:void 0,texture:void 0},tt[nt]=Tt),(Tt.type!==F||Tt.texture!==rt)&&(j!==nt&&(i.activeTexture(nt),j=nt),i.bindTexture(F,rt||ft[F]),Tt.type=F,Tt.texture=rt)}function O(){let F=tt[j];F!==void 0&&F.type!==void 0&&(i.bindTexture(F.type,null),F.type=void 0,F.texture=void 0)}function Pt(){try{i.compressedTexImage2D(...arguments)}catch(F){ee("WebGLState:",F)}}function Zt(){try{i.compressedTexImage3D(...arguments)}catch(F){ee("WebGLState:",F)}}function oe(){try{i.texSubImage2D(...arguments)}catch(F){ee("WebGLState:",F)}}function Et(){try{i.texSubImage3D(...arguments)}catch(F){ee("WebGLState:",F)}}function Ne(){try{i.compressedTexSubImage2D(...arguments)}catch(F){ee("WebGLState:",F)}}function Gt(){try{i.compressedTexSubImage3D(...arguments)}catch(F){ee("WebGLState:",F)}}function $t(){try{i.texStorage2D(...arguments)}catch(F){ee("WebGLState:",F)}}function P(){try{i.texStorage3D(...arguments)}catch(F){ee("WebGLState:",F)}}function S(){try{i.texImage2D(...arguments)}catch(F){ee("WebGLState:",F)}}function q(){try{i.texImage3D(...arguments)}catch(F){ee("WebGLState:",F)}}function dt(F){return u[F]!==void 0?u[F]:i.getParameter(F)}function at(F,rt){u[F]!==rt&&(i.pixelStorei(F,rt),u[F]=rt)}function vt(F){K.equals(F)===!1&&(i.scissor(F.x,F.y,F.z,F.w),K.copy(F))}function Mt(F){mt.equals(F)===!1&&(i.viewport(F.x,F.y,F.z,F.w),mt.copy(F))}function et(F,rt){let nt=c.get(rt);nt===void 0&&(nt=new WeakMap,c.set(rt,nt));let Tt=nt.get(F);Tt===void 0&&(Tt=i.getUniformBlockIndex(rt,F.name),i.uniformBlockBinding(rt,Tt,Tt),nt.set(F,Tt))}function it(F,rt,nt){let yt=c.get(rt).get(F);l[yt]!==nt&&(i.bindBufferBase(i.UNIFORM_BUFFER,yt,nt),l[yt]=nt)}function xt(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},u={},j=null,tt={},d={},l={},f=new WeakMap,g=[],_=null,p=!1,m=null,v=null,A=null,M=null,R=null,w=null,x=null,b=new ae(0,0,0),k=0,N=!1,L=null,G=null,U=null,C=null,B=null,K.set(0,0,i.canvas.width,i.canvas.height),mt.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:_t,disable:Ht,bindFramebuffer:jt,drawBuffers:Vt,useProgram:de,setBlending:Xe,setMaterial:Oe,setFlipSided:sn,setCullFace:Le,setLineWidth:vn,setPolygonOffset:ve,setScissorTest:fn,activeTexture:Ze,bindTexture:rn,unbindTexture:O,compressedTexImage2D:Pt,compressedTexImage3D:Zt,texImage2D:S,texImage3D:q,pixelStorei:at,getParameter:dt,updateUBOMapping:et,uniformBlockBinding:it,texStorage2D:$t,texStorage3D:P,texSubImage2D:oe,texSubImage3D:Et,compressedTexSubImage2D:Ne,compressedTexSubImage3D:Gt,scissor:vt,viewport:Mt,reset:xt}}function $b(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new ne,h=new WeakMap,u=new Set,d,f=new WeakMap,g=new Set,_=new FinalizationRegistry(P=>g.delete(P)),p=!1;try{p=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function m(P,S){return p?new OffscreenCanvas(P,S):ko("canvas")}function v(P,S,q){let dt=1,at=$t(P);if((at.width>q||at.height>q)&&(dt=q/Math.max(at.width,at.height)),dt<1)if(typeof HTMLImageElement<"u"&&P instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&P instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&P instanceof ImageBitmap||typeof VideoFrame<"u"&&P instanceof VideoFrame){let vt=Math.floor(dt*at.width),Mt=Math.floor(dt*at.height);d===void 0&&(d=m(vt,Mt));let et=S?m(vt,Mt):d;return et.width=vt,et.height=Mt,et.getContext("2d").drawImage(P,0,0,vt,Mt),Yt("WebGLRenderer: Texture has been resized from ("+at.width+"x"+at.height+") to ("+vt+"x"+Mt+")."),et}else return"data"in P&&Yt("WebGLRenderer: Image in DataTexture is too big ("+at.width+"x"+at.height+")."),P;return P}function A(P){return P.generateMipmaps}function M(P){i.generateMipmap(P)}function R(P){return P.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:P.isWebGL3DRenderTarget?i.TEXTURE_3D:P.isWebGLArrayRenderTarget||P.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function w(P,S,q,dt,at,vt=!1){if(P!==null){if(i[P]!==void 0)return i[P];Yt("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+P+"'")}let Mt;dt&&(Mt=t.get("EXT_texture_norm16"),Mt||Yt("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let et=S;if(S===i.RED&&(q===i.FLOAT&&(et=i.R32F),q===i.HALF_FLOAT&&(et=i.R16F),q===i.UNSIGNED_BYTE&&(et=i.R8),q===i.UNSIGNED_SHORT&&Mt&&(et=Mt.R16_EXT),q===i.SHORT&&Mt&&(et=Mt.R16_SNORM_EXT)),S===i.RED_INTEGER&&(q===i.UNSIGNED_BYTE&&(et=i.R8UI),q===i.UNSIGNED_SHORT&&(et=i.R16UI),q===i.UNSIGNED_INT&&(et=i.R32UI),q===i.BYTE&&(et=i.R8I),q===i.SHORT&&(et=i.R16I),q===i.INT&&(et=i.R32I)),S===i.RG&&(q===i.FLOAT&&(et=i.RG32F),q===i.HALF_FLOAT&&(et=i.RG16F),q===i.UNSIGNED_BYTE&&(et=i.RG8),q===i.UNSIGNED_SHORT&&Mt&&(et=Mt.RG16_EXT),q===i.SHORT&&Mt&&(et=Mt.RG16_SNORM_EXT)),S===i.RG_INTEGER&&(q===i.UNSIGNED_BYTE&&(et=i.RG8UI),q===i.UNSIGNED_SHORT&&(et=i.RG16UI),q===i.UNSIGNED_INT&&(et=i.RG32UI),q===i.BYTE&&(et=i.RG8I),q===i.SHORT&&(et=i.RG16I),q===i.INT&&(et=i.RG32I)),S===i.RGB_INTEGER&&(q===i.UNSIGNED_BYTE&&(et=i.RGB8UI),q===i.UNSIGNED_SHORT&&(et=i.RGB16UI),q===i.UNSIGNED_INT&&(et=i.RGB32UI),q===i.BYTE&&(et=i.RGB8I),q===i.SHORT&&(et=i.RGB16I),q===i.INT&&(et=i.RGB32I)),S===i.RGBA_INTEGER&&(q===i.UNSIGNED_BYTE&&(et=i.RGBA8UI),q===i.UNSIGNED_SHORT&&(et=i.RGBA16UI),q===i.UNSIGNED_INT&&(et=i.RGBA32UI),q===i.BYTE&&(et=i.RGBA8I),q===i.SHORT&&(et=i.RGBA16I),q===i.INT&&(et=i.RGBA32I)),S===i.RGB&&(q===i.UNSIGNED_SHORT&&Mt&&(et=Mt.RGB16_EXT),q===i.SHORT&&Mt&&(et=Mt.RGB16_SNORM_EXT),q===i.UNSIGNED_INT_5_9_9_9_REV&&(et=i.RGB9_E5),q===i.UNSIGNED_INT_10F_11F_11F_REV&&(et=i.R11F_G11F_B10F)),S===i.RGBA){let it=vt?Bo:ye.getTransfer(at);q===i.FLOAT&&(et=i.RGBA32F),q===i.HALF_FLOAT&&(et=i.RGBA16F),q===i.UNSIGNED_BYTE&&(et=it===Re?i.SRGB8_ALPHA8:i.RGBA8),q===i.UNSIGNED_SHORT&&Mt&&(et=Mt.RGBA16_EXT),q===i.SHORT&&Mt&&(et=Mt.RGBA16_SNORM_EXT),q===i.UNSIGNED_SHORT_4_4_4_4&&(et=i.RGBA4),q===i.UNSIGNED_SHORT_5_5_5_1&&(et=i.RGB5_A1)}return(et===i.R16F||et===i.R32F||et===i.RG16F||et===i.RG32F||et===i.RGBA16F||et===i.RGBA32F)&&t.get("EXT_color_buffer_float"),et}function x(P,S){let q;return P?S===null||S===Ci||S===ar?q=i.DEPTH24_STENCIL8:S===Pi?q=i.DEPTH32F_STENCIL8:S===oo&&(q=i.DEPTH24_STENCIL8,Yt("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):S===null||S===Ci||S===ar?q=i.DEPTH_COMPONENT24:S===Pi?q=i.DEPTH_COMPONENT32F:S===oo&&(q=i.DEPTH_COMPONENT16),q}function b(P,S){return A(P)===!0||P.isFramebufferTexture&&P.minFilter!==An&&P.minFilter!==$n?Math.log2(Math.max(S.width,S.height))+1:P.mipmaps.length>0?P.mipmaps.length:P.isCompressedTexture&&Array.isArray(P.image)?S.mipmaps.length:1}function k(P){let S=new WeakRef(P);n.get(P).__ref=S,g.add(S),_.register(P,S,S)}function N(P){let S=n.get(P).__ref;S!==void 0&&(g.delete(S),_.unregister(S))}function L(P){U(P.target)}function G(P){C(P.target)}function U(P){P.removeEventListener("dispose",L),N(P),X(P),P.isVideoTexture&&h.delete(P),P.isHTMLTexture&&u.delete(P)}function C(P){P.removeEventListener("dispose",G),N(P),ot(P)}function B(){for(let P of g){let S=P.deref();S!==void 0&&(S.isRenderTarget===!0?C(S):U(S))}g.clear(),u.clear()}function X(P){let S=n.get(P);if(S.__webglInit===void 0)return;let q=P.source,dt=f.get(q);if(dt){let at=dt[S.__cacheKey];at.usedTimes--,at.usedTimes===0&&z(P),Object.keys(dt).length===0&&f.delete(q)}n.remove(P)}function z(P){let S=n.get(P);i.deleteTexture(S.__webglTexture);let q=P.source,dt=f.get(q);delete dt[S.__cacheKey],o.memory.textures--}function ot(P){let S=n.get(P);S.__depthDisposeCallback&&S.__depthDisposeCallback();let q=P.depthTexture;if(q&&q.renderTarget===P&&U(q),P.isWebGLCubeRenderTarget)for(let at=0;at<6;at++){if(Array.isArray(S.__webglFramebuffer[at]))for(let vt=0;vt<S.__webglFramebuffer[at].length;vt++)i.deleteFramebuffer(S.__webglFramebuffer[at][vt]);else i.deleteFramebuffer(S.__webglFramebuffer[at]);S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer[at])}else{if(Array.isArray(S.__webglFramebuffer))for(let at=0;at<S.__webglFramebuffer.length;at++)i.deleteFramebuffer(S.__webglFramebuffer[at]);else i.deleteFramebuffer(S.__webglFramebuffer);if(S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer),S.__webglMultisampledFramebuffer&&i.deleteFramebuffer(S.__webglMultisampledFramebuffer),S.__webglColorRenderbuffer)for(let at=0;at<S.__webglColorRenderbuffer.length;at++)S.__webglColorRenderbuffer[at]&&i.deleteRenderbuffer(S.__webglColorRenderbuffer[at]);S.__webglDepthRenderbuffer&&i.deleteRenderbuffer(S.__webglDepthRenderbuffer)}let dt=P.textures;for(let at=0,vt=dt.length;at<vt;at++){let Mt=n.get(dt[at]);Mt.__webglTexture&&(i.deleteTexture(Mt.__webglTexture),o.memory.textures--),n.remove(dt[at])}n.remove(P)}let $=0;function j(){$=0}function tt(){return $}function pt(P){$=P}function ht(){let P=$;return P>=s.maxTextures&&Yt("WebGLTextures: Trying to use "+(P+1)+" texture units while this GPU supports only "+s.maxTextures),$+=1,P}function K(P){let S=[];return S.push(P.wrapS),S.push(P.wrapT),S.push(P.wrapR||0),S.push(P.magFilter),S.push(P.minFilter),S.push(P.anisotropy),S.push(P.internalFormat),S.push(P.format),S.push(P.type),S.push(P.generateMipmaps),S.push(P.mipmapsAutoUpdate),S.push(P.premultiplyAlpha),S.push(P.flipY),S.push(P.unpackAlignment),S.push(P.colorSpace),S.join()}function mt(P,S){let q=n.get(P);if(P.isVideoTexture&&Ne(P),P.isRenderTargetTexture===!1&&P.isExternalTexture!==!0&&P.version>0&&q.__version!==P.version){let dt=P.image;if(dt===null)Yt("WebGLRenderer: Texture marked for update but no image data found.");else if(dt.complete===!1)Yt("WebGLRenderer: Texture marked for update but image is incomplete");else{Oe(q,P,S);return}}else P.isExternalTexture&&(q.__webglTexture=P.sourceTexture?P.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,q.__webglTexture,i.TEXTURE0+S)}function lt(P,S){let q=n.get(P);if(P.isRenderTargetTexture===!1&&P.version>0&&q.__version!==P.version){Oe(q,P,S);return}else P.isExternalTexture&&(q.__webglTexture=P.sourceTexture?P.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,q.__webglTexture,i.TEXTURE0+S)}function ft(P,S){let q=n.get(P);if(P.isRenderTargetTexture===!1&&P.version>0&&q.__version!==P.version){Oe(q,P,S);return}e.bindTexture(i.TEXTURE_3D,q.__webglTexture,i.TEXTURE0+S)}function _t(P,S){let q=n.get(P);if(P.version>0&&q.__version!==P.version){sn(q,P,S);return}e.bindTexture(i.TEXTURE_CUBE_MAP,q.__webglTexture,i.TEXTURE0+S)}let Ht={[Tl]:i.REPEAT,[Hi]:i.CLAMP_TO_EDGE,[Al]:i.MIRRORED_REPEAT},jt={[An]:i.NEAREST,[Pm]:i.NEAREST_MIPMAP_NEAREST,[oa]:i.NEAREST_MIPMAP_LINEAR,[$n]:i.LINEAR,[tc]:i.LINEAR_MIPMAP_NEAREST,[ds]:i.LINEAR_MIPMAP_LINEAR},Vt={[Nm]:i.NEVER,[Zu]:i.ALWAYS,[Um]:i.LESS,[$u]:i.LEQUAL,[Fm]:i.EQUAL,[Yu]:i.GEQUAL,[Om]:i.GREATER,[Bm]:i.NOTEQUAL};function de(P,S){if(S.type===Pi&&t.has("OES_texture_float_linear")===!1&&(S.magFilter===$n||S.magFilter===tc||S.magFilter===oa||S.magFilter===ds||S.minFilter===$n||S.minFilter===tc||S.minFilter===oa||S.minFilter===ds)&&Yt("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(P,i.TEXTURE_WRAP_S,Ht[S.wrapS]),i.texParameteri(P,i.TEXTURE_WRAP_T,Ht[S.wrapT]),(P===i.TEXTURE_3D||P===i.TEXTURE_2D_ARRAY)&&i.texParameteri(P,i.TEXTURE_WRAP_R,Ht[S.wrapR]),i.texParameteri(P,i.TEXTURE_MAG_FILTER,jt[S.magFilter]),i.texParameteri(P,i.TEXTURE_MIN_FILTER,jt[S.minFilter]),S.compareFunction&&(i.texParameteri(P,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(P,i.TEXTURE_COMPARE_FUNC,Vt[S.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(S.magFilter===An||S.minFilter!==oa&&S.minFilter!==ds||S.type===Pi&&t.has("OES_texture_float_linear")===!1)return;if(S.anisotropy>1||n.get(S).__currentAnisotropy){let q=t.get("EXT_texture_filter_anisotropic");i.texParameterf(P,q.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(S.anisotropy,s.getMaxAnisotropy())),n.get(S).__currentAnisotropy=S.anisotropy}}}function ce(P,S){let q=!1;P.__webglInit===void 0&&(P.__webglInit=!0,S.addEventListener("dispose",L),k(S));let dt=S.source,at=f.get(dt);at===void 0&&(at={},f.set(dt,at));let vt=K(S);if(vt!==P.__cacheKey){at[vt]===void 0&&(at[vt]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,q=!0),at[vt].usedTimes++;let Mt=at[P.__cacheKey];Mt!==void 0&&(at[P.__cacheKey].usedTimes--,Mt.usedTimes===0&&z(S)),P.__cacheKey=vt,P.__webglTexture=at[vt].texture}return q}function se(P,S,q){return Math.floor(Math.floor(P/q)/S)}function Xe(P,S,q,dt){let vt=P.updateRanges;if(vt.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,S.width,S.height,q,dt,S.data);else{vt.sort((F,rt)=>F.start-rt.start);let Mt=0;for(let F=1;F<vt.length;F++){let rt=vt[Mt],nt=vt[F],Tt=rt.start+rt.count,yt=se(nt.start,S.width,4),bt=se(rt.start,S.width,4);nt.start<=Tt+1&&yt===bt&&se(nt.start+nt.count-1,S.width,4)===yt?rt.count=Math.max(rt.count,nt.start+nt.count-rt.start):(++Mt,vt[Mt]=nt)}vt.length=Mt+1;let et=e.getParameter(i.UNPACK_ROW_LENGTH),it=e.getParameter(i.UNPACK_SKIP_PIXELS),xt=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,S.width);for(let F=0,rt=vt.length;F<rt;F++){let nt=vt[F],Tt=Math.floor(nt.start/4),yt=Math.ceil(nt.count/4),bt=Tt%S.width,Wt=Math.floor(Tt/S.width),Kt=yt,ut=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,bt),e.pixelStorei(i.UNPACK_SKIP_ROWS,Wt),e.texSubImage2D(i.TEXTURE_2D,0,bt,Wt,Kt,ut,q,dt,S.data)}P.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,et),e.pixelStorei(i.UNPACK_SKIP_PIXELS,it),e.pixelStorei(i.UNPACK_SKIP_ROWS,xt)}}function Oe(P,S,q){let dt=i.TEXTURE_2D;(S.isDataArrayTexture||S.isCompressedArrayTexture)&&(dt=i.TEXTURE_2D_ARRAY),S.isData3DTexture&&(dt=i.TEXTURE_3D);let at=ce(P,S),vt=S.source;e.bindTexture(dt,P.__webglTexture,i.TEXTURE0+q);let Mt=n.get(vt);if(vt.version!==Mt.__version||at===!0){if(e.activeTexture(i.TEXTURE0+q),(typeof ImageBitmap<"u"&&S.image instanceof ImageBitmap)===!1){let ut=ye.getPrimaries(ye.workingColorSpace),Bt=S.colorSpace===ps?null:ye.getPrimaries(S.colorSpace),Qt=S.colorSpace===ps||ut===Bt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,Qt)}e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment);let it=v(S.image,!1,s.maxTextureSize);it=Gt(S,it);let xt=r.convert(S.format,S.colorSpace),F=r.convert(S.type),rt=w(S.internalFormat,xt,F,S.normalized,S.colorSpace,S.isVideoTexture);de(dt,S);let nt,Tt=S.mipmaps,yt=S.isVideoTexture!==!0,bt=Mt.__version===void 0||at===!0,Wt=vt.dataReady,Kt=b(S,it);if(S.isDepthTexture)rt=x(S.format===fs,S.type),bt&&(yt?e.texStorage2D(i.TEXTURE_2D,1,rt,it.width,it.height):e.texImage2D(i.TEXTURE_2D,0,rt,it.width,it.height,0,xt,F,null));else if(S.isDataTexture)if(Tt.length>0){yt&&bt&&e.texStorage2D(i.TEXTURE_2D,Kt,rt,Tt[0].width,Tt[0].height);for(let ut=0,Bt=Tt.length;ut<Bt;ut++)nt=Tt[ut],yt?Wt&&e.texSubImage2D(i.TEXTURE_2D,ut,0,0,nt.width,nt.height,xt,F,nt.data):e.texImage2D(i.TEXTURE_2D,ut,rt,nt.width,nt.height,0,xt,F,nt.data);S.generateMipmaps=!1}else yt?(bt&&e.texStorage2D(i.TEXTURE_2D,Kt,rt,it.width,it.height),Wt&&Xe(S,it,xt,F)):e.texImage2D(i.TEXTURE_2D,0,rt,it.width,it.height,0,xt,F,it.data);else if(S.isCompressedTexture)if(S.isCompressedArrayTexture){yt&&bt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Kt,rt,Tt[0].width,Tt[0].height,it.depth);for(let ut=0,Bt=Tt.length;ut<Bt;ut++)if(nt=Tt[ut],S.format!==Li)if(xt!==null)if(yt){if(Wt)if(S.layerUpdates.size>0){let Qt=rd(nt.width,nt.height,S.format,S.type);for(let Ct of S.layerUpdates){let le=nt.data.subarray(Ct*Qt/nt.data.BYTES_PER_ELEMENT,(Ct+1)*Qt/nt.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,ut,0,0,Ct,nt.width,nt.height,1,xt,le)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,ut,0,0,0,nt.width,nt.height,it.depth,xt,nt.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,ut,rt,nt.width,nt.height,it.depth,0,nt.data,0,0);else Yt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else yt?Wt&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,ut,0,0,0,nt.width,nt.height,it.depth,xt,F,nt.data):e.texImage3D(i.TEXTURE_2D_ARRAY,ut,rt,nt.width,nt.height,it.depth,0,xt,F,nt.data);S.layerUpdates.size>0&&S.clearLayerUpdates()}else{yt&&bt&&e.texStorage2D(i.TEXTURE_2D,Kt,rt,Tt[0].width,Tt[0].height);for(let ut=0,Bt=Tt.length;ut<Bt;ut++)nt=Tt[ut],S.format!==Li?xt!==null?yt?Wt&&e.compressedTexSubImage2D(i.TEXTURE_2D,ut,0,0,nt.width,nt.height,xt,nt.data):e.compressedTexImage2D(i.TEXTURE_2D,ut,rt,nt.width,nt.height,0,nt.data):Yt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):yt?Wt&&e.texSubImage2D(i.TEXTURE_2D,ut,0,0,nt.width,nt.height,xt,F,nt.data):e.texImage2D(i.TEXTURE_2D,ut,rt,nt.width,nt.height,0,xt,F,nt.data)}else if(S.isDataArrayTexture)if(yt){if(bt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Kt,rt,it.width,it.height,it.depth),Wt)if(S.layerUpdates.size>0){let ut=rd(it.width,it.height,S.format,S.type);for(let Bt of S.layerUpdates){let Qt=it.data.subarray(Bt*ut/it.data.BYTES_PER_ELEMENT,(Bt+1)*ut/it.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,Bt,it.width,it.height,1,xt,F,Qt)}S.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,it.width,it.height,it.depth,xt,F,it.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,rt,it.width,it.height,it.depth,0,xt,F,it.data);else if(S.isData3DTexture)yt?(bt&&e.texStorage3D(i.TEXTURE_3D,Kt,rt,it.width,it.height,it.depth),Wt&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,it.width,it.height,it.depth,xt,F,it.data)):e.texImage3D(i.TEXTURE_3D,0,rt,it.width,it.height,it.depth,0,xt,F,it.data);else if(S.isFramebufferTexture){if(bt)if(yt)e.texStorage2D(i.TEXTURE_2D,Kt,rt,it.width,it.height);else{let ut=it.width,Bt=it.height;for(let Qt=0;Qt<Kt;Qt++)e.texImage2D(i.TEXTURE_2D,Qt,rt,ut,Bt,0,xt,F,null),ut>>=1,Bt>>=1}}else if(S.isHTMLTexture){if("texElementImage2D"in i){let ut=i.canvas;if(ut.hasAttribute("layoutsubtree")||ut.setAttribute("layoutsubtree","true"),it.parentNode!==ut){ut.appendChild(it),u.add(S),ut.onpaint=Bt=>{let Qt=Bt.changedElements;for(let Ct of u)Qt.includes(Ct.image)&&(Ct.needsUpdate=!0)},ut.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,it);else{let Qt=i.RGBA,Ct=i.RGBA,le=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,Qt,Ct,le,it)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(Tt.length>0){if(yt&&bt){let ut=$t(Tt[0]);e.texStorage2D(i.TEXTURE_2D,Kt,rt,ut.width,ut.height)}for(let ut=0,Bt=Tt.length;ut<Bt;ut++)nt=Tt[ut],yt?Wt&&e.texSubImage2D(i.TEXTURE_2D,ut,0,0,xt,F,nt):e.texImage2D(i.TEXTURE_2D,ut,rt,xt,F,nt);S.generateMipmaps=!1}else if(yt){if(bt){let ut=$t(it);e.texStorage2D(i.TEXTURE_2D,Kt,rt,ut.width,ut.height)}Wt&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,xt,F,it)}else e.texImage2D(i.TEXTURE_2D,0,rt,xt,F,it);A(S)&&S.mipmapsAutoUpdate===!0&&M(dt),Mt.__version=vt.version,S.onUpdate&&S.onUpdate(S)}P.__version=S.version}function sn(P,S,q){if(S.image.length!==6)return;let dt=ce(P,S),at=S.source;e.bindTexture(i.TEXTURE_CUBE_MAP,P.__webglTexture,i.TEXTURE0+q);let vt=n.get(at);if(at.version!==vt.__version||dt===!0){e.activeTexture(i.TEXTURE0+q);let Mt=ye.getPrimaries(ye.workingColorSpace),et=S.colorSpace===ps?null:ye.getPrimaries(S.colorSpace),it=S.colorSpace===ps||Mt===et?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,it);let xt=S.isCompressedTexture||S.image[0].isCompressedTexture,F=S.image[0]&&S.image[0].isDataTexture,rt=[];for(let Ct=0;Ct<6;Ct++)!xt&&!F?rt[Ct]=v(S.image[Ct],!0,s.maxCubemapSize):rt[Ct]=F?S.image[Ct].image:S.image[Ct],rt[Ct]=Gt(S,rt[Ct]);let nt=rt[0],Tt=r.convert(S.format,S.colorSpace),yt=r.convert(S.type),bt=w(S.internalFormat,Tt,yt,S.normalized,S.colorSpace),Wt=S.isVideoTexture!==!0,Kt=vt.__version===void 0||dt===!0,ut=at.dataReady,Bt=b(S,nt);de(i.TEXTURE_CUBE_MAP,S);let Qt;if(S.isDepthTexture){if(bt=x(S.format===fs,S.type),Kt)if(Wt)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,bt,nt.width,nt.height);else for(let Ct=0;Ct<6;Ct++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,bt,nt.width,nt.height,0,Tt,yt,null)}else if(xt){Wt&&Kt&&e.texStorage2D(i.TEXTURE_CUBE_MAP,Bt,bt,nt.width,nt.height);for(let Ct=0;Ct<6;Ct++){Qt=rt[Ct].mipmaps;for(let le=0;le<Qt.length;le++){let Be=Qt[le];S.format!==Li?Tt!==null?Wt?ut&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le,0,0,Be.width,Be.height,Tt,Be.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le,bt,Be.width,Be.height,0,Be.data):Yt("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Wt?ut&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le,0,0,Be.width,Be.height,Tt,yt,Be.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le,bt,Be.width,Be.height,0,Tt,yt,Be.data)}}}else{if(Qt=S.mipmaps,Wt&&Kt){Qt.length>0&&Bt++;let Ct=$t(rt[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,Bt,bt,Ct.width,Ct.height)}for(let Ct=0;Ct<6;Ct++)if(F){Wt?ut&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,0,0,rt[Ct].width,rt[Ct].height,Tt,yt,rt[Ct].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,bt,rt[Ct].width,rt[Ct].height,0,Tt,yt,rt[Ct].data);for(let le=0;le<Qt.length;le++){let kn=Qt[le].image[Ct].image;Wt?ut&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le+1,0,0,kn.width,kn.height,Tt,yt,kn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le+1,bt,kn.width,kn.height,0,Tt,yt,kn.data)}}else{Wt?ut&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,0,0,Tt,yt,rt[Ct]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,bt,Tt,yt,rt[Ct]);for(let le=0;le<Qt.length;le++){let Be=Qt[le];Wt?ut&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le+1,0,0,Tt,yt,Be.image[Ct]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le+1,bt,Tt,yt,Be.image[Ct])}}}A(S)&&S.mipmapsAutoUpdate===!0&&M(i.TEXTURE_CUBE_MAP),vt.__version=at.version,S.onUpdate&&S.onUpdate(S)}P.__version=S.version}function Le(P,S,q,dt,at,vt){let Mt=r.convert(q.format,q.colorSpace),et=r.convert(q.type),it=w(q.internalFormat,Mt,et,q.normalized,q.colorSpace),xt=n.get(S),F=n.get(q);if(F.__renderTarget=S,!xt.__hasExternalTextures){let rt=Math.max(1,S.width>>vt),nt=Math.max(1,S.height>>vt);at===i.TEXTURE_3D||at===i.TEXTURE_2D_ARRAY?e.texImage3D(at,vt,it,rt,nt,S.depth,0,Mt,et,null):e.texImage2D(at,vt,it,rt,nt,0,Mt,et,null)}e.bindFramebuffer(i.FRAMEBUFFER,P),Et(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,dt,at,F.__webglTexture,0,oe(S)):(at===i.TEXTURE_2D||at>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&at<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,dt,at,F.__webglTexture,vt),e.bindFramebuffer(i.FRAMEBUFFER,null)}function vn(P,S,q){if(i.bindRenderbuffer(i.RENDERBUFFER,P),S.depthBuffer){let dt=S.depthTexture,at=dt&&dt.isDepthTexture?dt.type:null,vt=x(S.stencilBuffer,at),Mt=S.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;Et(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,oe(S),vt,S.width,S.height):q?i.renderbufferStorageMultisample(i.RENDERBUFFER,oe(S),vt,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,vt,S.width,S.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,Mt,i.RENDERBUFFER,P)}else{let dt=S.textures;for(let at=0;at<dt.length;at++){let vt=dt[at],Mt=r.convert(vt.format,vt.colorSpace),et=r.convert(vt.type),it=w(vt.internalFormat,Mt,et,vt.normalized,vt.colorSpace);Et(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,oe(S),it,S.width,S.height):q?i.renderbufferStorageMultisample(i.RENDERBUFFER,oe(S),it,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,it,S.width,S.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function ve(P,S,q){let dt=S.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,P),!(S.depthTexture&&S.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let at=n.get(S.depthTexture);at.__renderTarget=S;let vt=dt?S.depthTexture.image[0]:S.depthTexture.image;(!at.__webglTexture||vt.width!==S.width||vt.height!==S.height)&&(vt.width=S.width,vt.height=S.height,S.depthTexture.needsUpdate=!0),dt?_t(S.depthTexture,0):mt(S.depthTexture,0);let Mt=at.__webglTexture,et=oe(S),it=dt?i.TEXTURE_CUBE_MAP_POSITIVE_X+q:i.TEXTURE_2D,xt=S.depthTexture.format===fs?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(S.depthTexture.format===as)Et(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,xt,it,Mt,0,et):i.framebufferTexture2D(i.FRAMEBUFFER,xt,it,Mt,0);else if(S.depthTexture.format===fs)Et(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,xt,it,Mt,0,et):i.framebufferTexture2D(i.FRAMEBUFFER,xt,it,Mt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function fn(P){let S=n.get(P),q=P.isWebGLCubeRenderTarget===!0;if(S.__boundDepthTexture!==P.depthTexture){let dt=P.depthTexture;if(S.__depthDisposeCallback&&S.__depthDisposeCallback(),dt){let at=()=>{delete S.__boundDepthTexture,delete S.__depthDisposeCallback,dt.removeEventListener("dispose",at)};dt.addEventListener("dispose",at),S.__depthDisposeCallback=at}S.__boundDepthTexture=dt}if(P.depthTexture&&!S.__autoAllocateDepthBuffer)if(q)for(let dt=0;dt<6;dt++)ve(S.__webglFramebuffer[dt],P,dt);else P.texture.mipmaps.length>0?ve(S.__webglFramebuffer[0],P,0):ve(S.__webglFramebuffer,P,0);else if(q){S.__webglDepthbuffer=[];for(let dt=0;dt<6;dt++)if(e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[dt]),S.__webglDepthbuffer[dt]===void 0)S.__webglDepthbuffer[dt]=i.createRenderbuffer(),vn(S.__webglDepthbuffer[dt],P,!1);else{let at=P.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,vt=S.__webglDepthbuffer[dt];i.bindRenderbuffer(i.RENDERBUFFER,vt),i.framebufferRenderbuffer(i.FRAMEBUFFER,at,i.RENDERBUFFER,vt)}}else if(P.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer),S.__webglDepthbuffer===void 0)S.__webglDepthbuffer=i.createRenderbuffer(),vn(S.__webglDepthbuffer,P,!1);else{let at=P.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,vt=S.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,vt),i.framebufferRenderbuffer(i.FRAMEBUFFER,at,i.RENDERBUFFER,vt)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function Ze(P,S,q){let dt=n.get(P);S!==void 0&&Le(dt.__webglFramebuffer,P,P.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),q!==void 0&&fn(P)}function rn(P){let S=P.texture,q=n.get(P),dt=n.get(S);P.addEventListener("dispose",G),k(P);let at=P.textures,vt=P.isWebGLCubeRenderTarget===!0,Mt=at.length>1;if(Mt||(dt.__webglTexture===void 0&&(dt.__webglTexture=i.createTexture()),dt.__version=S.version,o.memory.textures++),vt){q.__webglFramebuffer=[];for(let et=0;et<6;et++)if(S.mipmaps.length>0){q.__webglFramebuffer[et]=[];for(let it=0;it<S.mipmaps.length;it++)q.__webglFramebuffer[et][it]=i.createFramebuffer()}else q.__webglFramebuffer[et]=i.createFramebuffer()}else{if(S.mipmaps.length>0){q.__webglFramebuffer=[];for(let et=0;et<S.mipmaps.length;et++)q.__webglFramebuffer[et]=i.createFramebuffer()}else q.__webglFramebuffer=i.createFramebuffer();if(Mt)for(let et=0,it=at.length;et<it;et++){let xt=n.get(at[et]);xt.__webglTexture===void 0&&(xt.__webglTexture=i.createTexture(),o.memory.textures++)}if(P.samples>0&&Et(P)===!1){q.__webglMultisampledFramebuffer=i.createFramebuffer(),q.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,q.__webglMultisampledFramebuffer);for(let et=0;et<at.length;et++){let it=at[et];q.__webglColorRenderbuffer[et]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,q.__webglColorRenderbuffer[et]);let xt=r.convert(it.format,it.colorSpace),F=r.convert(it.type),rt=w(it.internalFormat,xt,F,it.normalized,it.colorSpace,P.isXRRenderTarget===!0),nt=oe(P);i.renderbufferStorageMultisample(i.RENDERBUFFER,nt,rt,P.width,P.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+et,i.RENDERBUFFER,q.__webglColorRenderbuffer[et])}i.bindRenderbuffer(i.RENDERBUFFER,null),P.depthBuffer&&(q.__webglDepthRenderbuffer=i.createRenderbuffer(),vn(q.__webglDepthRenderbuffer,P,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(vt){e.bindTexture(i.TEXTURE_CUBE_MAP,dt.__webglTexture),de(i.TEXTURE_CUBE_MAP,S);for(let et=0;et<6;et++)if(S.mipmaps.length>0)for(let it=0;it<S.mipmaps.length;it++)Le(q.__webglFramebuffer[et][it],P,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+et,it);else Le(q.__webglFramebuffer[et],P,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+et,0);A(S)?M(i.TEXTURE_CUBE_MAP):S.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}else if(Mt){for(let et=0,it=at.length;et<it;et++){let xt=at[et],F=n.get(xt),rt=i.TEXTURE_2D;(P.isWebGL3DRenderTarget||P.isWebGLArrayRenderTarget)&&(rt=P.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(rt,F.__webglTexture),de(rt,xt),Le(q.__webglFramebuffer,P,xt,i.COLOR_ATTACHMENT0+et,rt,0),A(xt)&&M(rt)}e.unbindTexture()}else{let et=i.TEXTURE_2D;if((P.isWebGL3DRenderTarget||P.isWebGLArrayRenderTarget)&&(et=P.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(et,dt.__webglTexture),de(et,S),S.mipmaps.length>0)for(let it=0;it<S.mipmaps.length;it++)Le(q.__webglFramebuffer[it],P,S,i.COLOR_ATTACHMENT0,et,it);else Le(q.__webglFramebuffer,P,S,i.COLOR_ATTACHMENT0,et,0);A(S)?M(et):S.mipmaps.length>0&&i.texParameteri(et,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}P.depthBuffer&&fn(P)}function O(P){let S=P.textures;for(let q=0,dt=S.length;q<dt;q++){let at=S[q];if(A(at)&&at.mipmapsAutoUpdate===!0){let vt=R(P),Mt=n.get(at).__webglTexture;e.bindTexture(vt,Mt),M(vt),e.unbindTexture()}}}let Pt=[];function Zt(P){if(P.samples>0){if(Et(P)===!1){let S=P.textures,q=P.width,dt=P.height,at=i.COLOR_BUFFER_BIT,vt=P.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Mt=n.get(P),et=S.length>1;if(et)for(let xt=0;xt<S.length;xt++)e.bindFramebuffer(i.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,Mt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),P.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer);for(let xt=0;xt<S.length;xt++){if(P.resolveDepthBuffer&&(P.depthBuffer&&(at|=i.DEPTH_BUFFER_BIT),P.stencilBuffer&&P.resolveStencilBuffer&&(at|=i.STENCIL_BUFFER_BIT)),et){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,Mt.__webglColorRenderbuffer[xt]);let F=n.get(S[xt]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,F,0)}i.blitFramebuffer(0,0,q,dt,0,0,q,dt,at,i.NEAREST),l===!0&&(Pt.length=0,Pt.push(i.COLOR_ATTACHMENT0+xt),P.depthBuffer&&P.storeMultisampledDepthBuffer===!1&&Pt.push(vt),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,Pt))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),et)for(let xt=0;xt<S.length;xt++){e.bindFramebuffer(i.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.RENDERBUFFER,Mt.__webglColorRenderbuffer[xt]);let F=n.get(S[xt]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,Mt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.TEXTURE_2D,F,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer)}else if(P.depthBuffer&&P.storeMultisampledDepthBuffer===!1&&l){let S=P.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[S])}}}function oe(P){return Math.min(s.maxSamples,P.samples)}function Et(P){let S=n.get(P);return P.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&S.__useRenderToTexture!==!1}function Ne(P){let S=o.render.frame;h.get(P)!==S&&(h.set(P,S),P.update())}function Gt(P,S){let q=P.colorSpace,dt=P.format,at=P.type;return P.isCompressedTexture===!0||P.isVideoTexture===!0||q!==Oo&&q!==ps&&(ye.getTransfer(q)===Re?(dt!==Li||at!==Jn)&&Yt("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):ee("WebGLTextures: Unsupported texture color space:",q)),S}function $t(P){return typeof HTMLImageElement<"u"&&P instanceof HTMLImageElement?(c.width=P.naturalWidth||P.width,c.height=P.naturalHeight||P.height):typeof VideoFrame<"u"&&P instanceof VideoFrame?(c.width=P.displayWidth,c.height=P.displayHeight):(c.width=P.width,c.height=P.height),c}this.allocateTextureUnit=ht,this.resetTextureUnits=j,this.getTextureUnits=tt,this.setTextureUnits=pt,this.setTexture2D=mt,this.setTexture2DArray=lt,this.setTexture3D=ft,this.setTextureCube=_t,this.rebindTextures=Ze,this.setupRenderTarget=rn,this.updateRenderTargetMipmap=O,this.updateMultisampleRenderTarget=Zt,this.setupDepthRenderbuffer=fn,this.setupFrameBufferTexture=Le,this.useMultisampledRTT=Et,this.dispose=B}function Yb(i,t){function e(n,s=ps){let r,o=ye.getTransfer(s);if(n===Jn)return i.UNSIGNED_BYTE;if(n===nc)return i.UNSIGNED_SHORT_4_4_4_4;if(n===ic)return i.UNSIGNED_SHORT_5_5_5_1;if(n===Gu)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===Hu)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===zu)return i.BYTE;if(n===Vu)return i.SHORT;if(n===oo)return i.UNSIGNED_SHORT;if(n===ec)return i.INT;if(n===Ci)return i.UNSIGNED_INT;if(n===Pi)return i.FLOAT;if(n===Ii)return i.HALF_FLOAT;if(n===Wu)return i.ALPHA;if(n===Xu)return i.RGB;if(n===Li)return i.RGBA;if(n===as)return i.DEPTH_COMPONENT;if(n===fs)return i.DEPTH_STENCIL;if(n===qu)return i.RED;if(n===sc)return i.RED_INTEGER;if(n===ks)return i.RG;if(n===rc)return i.RG_INTEGER;if(n===oc)return i.RGBA_INTEGER;if(n===aa||n===la||n===ca||n===ha)if(o===Re)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===aa)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===la)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===ca)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===ha)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===aa)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===la)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===ca)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===ha)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===ac||n===lc||n===cc||n===hc)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===ac)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===lc)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===cc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===hc)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===uc||n===dc||n===fc||n===pc||n===mc||n===ua||n===gc)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===uc||n===dc)return o===Re?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===fc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===pc)return r.COMPRESSED_R11_EAC;if(n===mc)return r.COMPRESSED_SIGNED_R11_EAC;if(n===ua)return r.COMPRESSED_RG11_EAC;if(n===gc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===_c||n===xc||n===yc||n===vc||n===Mc||n===Sc||n===bc||n===wc||n===Ec||n===Tc||n===Ac||n===Rc||n===Cc||n===Pc)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===_c)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===xc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===yc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===vc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===Mc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===Sc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===bc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===wc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Ec)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===Tc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Ac)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Rc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===Cc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===Pc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Ic||n===Lc||n===Dc)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===Ic)return o===Re?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Lc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Dc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===Nc||n===Uc||n===da||n===Fc)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===Nc)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Uc)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===da)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===Fc)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===ar?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var Zb=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,Jb=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,pd=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new Zo(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new Wi({vertexShader:Zb,fragmentShader:Jb,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new Rn(new ir(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},md=class extends Ai{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,h=null,u=null,d=null,f=null,g=null,_=typeof XRWebGLBinding<"u",p=new pd,m={},v=e.getContextAttributes(),A=null,M=null,R=[],w=[],x=new ne,b=null,k=null,N=new qn;N.viewport=new $e;let L=new qn;L.viewport=new $e;let G=[N,L],U=new Jl,C=null,B=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(K){let mt=R[K];return mt===void 0&&(mt=new Kr,R[K]=mt),mt.getTargetRaySpace()},this.getControllerGrip=function(K){let mt=R[K];return mt===void 0&&(mt=new Kr,R[K]=mt),mt.getGripSpace()},this.getHand=function(K){let mt=R[K];return mt===void 0&&(mt=new Kr,R[K]=mt),mt.getHandSpace()};function X(K){let mt=w.indexOf(K.inputSource);if(mt===-1)return;let lt=R[mt];lt!==void 0&&(lt.update(K.inputSource,K.frame,c||o),lt.dispatchEvent({type:K.type,data:K.inputSource}))}function z(){s.removeEventListener("select",X),s.removeEventListener("selectstart",X),s.removeEventListener("selectend",X),s.removeEventListener("squeeze",X),s.removeEventListener("squeezestart",X),s.removeEventListener("squeezeend",X),s.removeEventListener("end",z),s.removeEventListener("inputsourceschange",ot);for(let K=0;K<R.length;K++){let mt=w[K];mt!==null&&(w[K]=null,R[K].disconnect(mt))}C=null,B=null,p.reset();for(let K in m)delete m[K];if(t.setRenderTarget(A),f=null,d=null,u=null,s=null,M=null,ht.stop(),n.isPresenting=!1,t.setPixelRatio(b),t.setSize(x.width,x.height,!1),k!==null){let K=k.camera;K.fov=k.fov,K.zoom=k.zoom,K.updateProjectionMatrix(),k=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(K){r=K,n.isPresenting===!0&&Yt("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(K){a=K,n.isPresenting===!0&&Yt("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function(K){c=K},this.getBaseLayer=function(){return d!==null?d:f},this.getBinding=function(){return u===null&&_&&(u=new XRWebGLBinding(s,e)),u},this.getFrame=function(){return g},this.getSession=function(){return s},this.setSession=async function(K){if(s=K,s!==null){if(A=t.getRenderTarget(),s.addEventListener("select",X),s.addEventListener("selectstart",X),s.addEventListener("selectend",X),s.addEventListener("squeeze",X),s.addEventListener("squeezestart",X),s.addEventListener("squeezeend",X),s.addEventListener("end",z),s.addEventListener("inputsourceschange",ot),v.xrCompatible!==!0&&await e.makeXRCompatible(),b=t.getPixelRatio(),t.getSize(x),_&&"createProjectionLayer"in XRWebGLBinding.prototype){let lt=null,ft=null,_t=null;v.depth&&(_t=v.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,lt=v.stencil?fs:as,ft=v.stencil?ar:Ci);let Ht={colorFormat:e.RGBA8,depthFormat:_t,scaleFactor:r};u=this.getBinding(),d=u.createProjectionLayer(Ht),s.updateRenderState({layers:[d]}),t.setPixelRatio(1),t.setSize(d.textureWidth,d.textureHeight,!1),M=new ci(d.textureWidth,d.textureHeight,{format:Li,type:Jn,depthTexture:new us(d.textureWidth,d.textureHeight,ft,void 0,void 0,void 0,void 0,void 0,void 0,lt),stencilBuffer:v.stencil,colorSpace:t.outputColorSpace,samples:v.antialias?4:0,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}else{let lt={antialias:v.antialias,alpha:!0,depth:v.depth,stencil:v.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,e,lt),s.updateRenderState({baseLayer:f}),t.setPixelRatio(1),t.setSize(f.framebufferWidth,f.framebufferHeight,!1),M=new ci(f.framebufferWidth,f.framebufferHeight,{format:Li,type:Jn,colorSpace:t.outputColorSpace,stencilBuffer:v.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}M.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),ht.setContext(s),ht.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return p.getDepthTexture()};function ot(K){for(let mt=0;mt<K.removed.length;mt++){let lt=K.removed[mt],ft=w.indexOf(lt);ft>=0&&(w[ft]=null,R[ft].disconnect(lt))}for(let mt=0;mt<K.added.length;mt++){let lt=K.added[mt],ft=w.indexOf(lt);if(ft===-1){for(let Ht=0;Ht<R.length;Ht++)if(Ht>=w.length){w.push(lt),ft=Ht;break}else if(w[Ht]===null){w[Ht]=lt,ft=Ht;break}if(ft===-1)break}let _t=R[ft];_t&&_t.connect(lt)}}function $(K,mt){mt===null?K.matrixWorld.copy(K.matrix):K.matrixWorld.multiplyMatrices(mt.matrixWorld,K.matrix),K.matrixWorldInverse.copy(K.matrixWorld).invert()}this.updateCamera=function(K){if(s===null)return;let mt=K.near,lt=K.far;p.texture!==null&&(p.depthNear>0&&(mt=p.depthNear),p.depthFar>0&&(lt=p.depthFar)),U.near=L.near=N.near=mt,U.far=L.far=N.far=lt,(C!==U.near||B!==U.far)&&(s.updateRenderState({depthNear:U.near,depthFar:U.far}),C=U.near,B=U.far),U.layers.mask=K.layers.mask|6,N.layers.mask=U.layers.mask&-5,L.layers.mask=U.layers.mask&-3;let ft=K.parent,_t=U.cameras;$(U,ft);for(let Ht=0;Ht<_t.length;Ht++)$(_t[Ht],ft);U.projectionMatrix.copy(N.projectionMatrix),U.projectionMatrixInverse.copy(N.projectionMatrixInverse),k===null&&K.isPerspectiveCamera&&(k={camera:K,fov:K.fov,zoom:K.zoom}),j(K,U,ft)};function j(K,mt,lt){lt===null?K.matrix.copy(mt.matrixWorld):(K.matrix.copy(lt.matrixWorld),K.matrix.invert(),K.matrix.multiply(mt.matrixWorld)),K.matrix.decompose(K.position,K.quaternion,K.scale),K.updateMatrixWorld(!0),K.projectionMatrix.copy(mt.projectionMatrix),K.projectionMatrixInverse.copy(mt.projectionMatrixInverse),K.isPerspectiveCamera&&(K.fov=Jr*2*Math.atan(1/K.projectionMatrix.elements[5]),K.zoom=1)}this.getCamera=function(){return U},this.getFoveation=function(){if(!(d===null&&f===null))return l},this.setFoveation=function(K){l=K,d!==null&&(d.fixedFoveation=K),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=K)},this.hasDepthSensing=function(){return p.texture!==null},this.getDepthSensingMesh=function(){return p.getMesh(U)},this.getCameraTexture=function(K){return m[K]};let tt=null;function pt(K,mt){if(h=mt.getViewerPose(c||o),g=mt,h!==null){let lt=h.views;f!==null&&(t.setRenderTargetFramebuffer(M,f.framebuffer),t.setRenderTarget(M));let ft=!1;lt.length!==U.cameras.length&&(U.cameras.length=0,ft=!0);for(let Vt=0;Vt<lt.length;Vt++){let de=lt[Vt],ce=null;if(f!==null)ce=f.getViewport(de);else{let Xe=u.getViewSubImage(d,de);ce=Xe.viewport,Vt===0&&(t.setRenderTargetTextures(M,Xe.colorTexture,Xe.depthStencilTexture),t.setRenderTarget(M))}let se=G[Vt];se===void 0&&(se=new qn,se.layers.enable(Vt),se.viewport=new $e,G[Vt]=se),se.matrix.fromArray(de.transform.matrix),se.matrix.decompose(se.position,se.quaternion,se.scale),se.projectionMatrix.fromArray(de.projectionMatrix),se.projectionMatrixInverse.copy(se.projectionMatrix).invert(),se.viewport.set(ce.x,ce.y,ce.width,ce.height),Vt===0&&(U.matrix.copy(se.matrix),U.matrix.decompose(U.position,U.quaternion,U.scale)),ft===!0&&U.cameras.push(se)}let _t=s.enabledFeatures;if(_t&&_t.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&_){u=n.getBinding();let Vt=u.getDepthInformation(lt[0]);Vt&&Vt.isValid&&Vt.texture&&p.init(Vt,s.renderState)}if(_t&&_t.includes("camera-access")&&_){t.state.unbindTexture(),u=n.getBinding();for(let Vt=0;Vt<lt.length;Vt++){let de=lt[Vt].camera;if(de){let ce=m[de];ce||(ce=new Zo,m[de]=ce);let se=u.getCameraImage(de);ce.sourceTexture=se}}}}for(let lt=0;lt<R.length;lt++){let ft=w[lt],_t=R[lt];ft!==null&&_t!==void 0&&_t.update(ft,mt,c||o)}tt&&tt(K,mt),mt.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:mt}),g=null}let ht=new _g;ht.setAnimationLoop(pt),this.setAnimationLoop=function(K){tt=K},this.dispose=function(){}}},jb=new We,Ag=new ie;Ag.set(-1,0,0,0,1,0,0,0,1);function Kb(i,t){function e(p,m){p.matrixAutoUpdate===!0&&p.updateMatrix(),m.value.copy(p.matrix)}function n(p,m){m.color.getRGB(p.fogColor.value,nd(i)),m.isFog?(p.fogNear.value=m.near,p.fogFar.value=m.far):m.isFogExp2&&(p.fogDensity.value=m.density)}function s(p,m,v,A,M){m.isNodeMaterial?m.uniformsNeedUpdate=!1:m.isMeshBasicMaterial?r(p,m):m.isMeshLambertMaterial?(r(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshToonMaterial?(r(p,m),u(p,m)):m.isMeshPhongMaterial?(r(p,m),h(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshStandardMaterial?(r(p,m),d(p,m),m.isMeshPhysicalMaterial&&f(p,m,M)):m.isMeshMatcapMaterial?(r(p,m),g(p,m)):m.isMeshDepthMaterial?r(p,m):m.isMeshDistanceMaterial?(r(p,m),_(p,m)):m.isMeshNormalMaterial?r(p,m):m.isLineBasicMaterial?(o(p,m),m.isLineDashedMaterial&&a(p,m)):m.isPointsMaterial?l(p,m,v,A):m.isSpriteMaterial?c(p,m):m.isShadowMaterial?(p.color.value.copy(m.color),p.opacity.value=m.opacity):m.isShaderMaterial&&(m.uniformsNeedUpdate=!1)}function r(p,m){p.opacity.value=m.opacity,m.color&&p.diffuse.value.copy(m.color),m.emissive&&p.emissive.value.copy(m.emissive).multiplyScalar(m.emissiveIntensity),m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.bumpMap&&(p.bumpMap.value=m.bumpMap,e(m.bumpMap,p.bumpMapTransform),p.bumpScale.value=m.bumpScale,m.side===In&&(p.bumpScale.value*=-1)),m.normalMap&&(p.normalMap.value=m.normalMap,e(m.normalMap,p.normalMapTransform),p.normalScale.value.copy(m.normalScale),m.side===In&&p.normalScale.value.negate()),m.displacementMap&&(p.displacementMap.value=m.displacementMap,e(m.displacementMap,p.displacementMapTransform),p.displacementScale.value=m.displacementScale,p.displacementBias.value=m.displacementBias),m.emissiveMap&&(p.emissiveMap.value=m.emissiveMap,e(m.emissiveMap,p.emissiveMapTransform)),m.specularMap&&(p.specularMap.value=m.specularMap,e(m.specularMap,p.specularMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest);let v=t.get(m),A=v.envMap,M=v.envMapRotation;A&&(p.envMap.value=A,p.envMapRotation.value.setFromMatrix4(jb.makeRotationFromEuler(M)).transpose(),A.isCubeTexture&&A.isRenderTargetTexture===!1&&p.envMapRotation.value.premultiply(Ag),p.reflectivity.value=m.reflectivity,p.ior.value=m.ior,p.refractionRatio.value=m.refractionRatio),m.lightMap&&(p.lightMap.value=m.lightMap,p.lightMapIntensity.value=m.lightMapIntensity,e(m.lightMap,p.lightMapTransform)),m.aoMap&&(p.aoMap.value=m.aoMap,p.aoMapIntensity.value=m.aoMapIntensity,e(m.aoMap,p.aoMapTransform))}function o(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform))}function a(p,m){p.dashSize.value=m.dashSize,p.totalSize.value=m.dashSize+m.gapSize,p.scale.value=m.scale}function l(p,m,v,A){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.size.value=m.size*v,p.scale.value=A*.5,m.map&&(p.map.value=m.map,e(m.map,p.uvTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function c(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.rotation.value=m.rotation,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function h(p,m){p.specular.value.copy(m.specular),p.shininess.value=Math.max(m.shininess,1e-4)}function u(p,m){m.gradientMap&&(p.gradientMap.value=m.gradientMap)}function d(p,m){p.metalness.value=m.metalness,m.metalnessMap&&(p.metalnessMap.value=m.metalnessMap,e(m.metalnessMap,p.metalnessMapTransform)),p.roughness.value=m.roughness,m.roughnessMap&&(p.roughnessMap.value=m.roughnessMap,e(m.roughnessMap,p.roughnessMapTransform)),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)}function f(p,m,v){p.ior.value=m.ior,m.diffuseRoughness>0&&(p.diffuseRoughness.value=m.diffuseRoughness,m.diffuseRoughnessMap&&(p.diffuseRoughnessMap.value=m.diffuseRoughnessMap,e(m.diffuseRoughnessMap,p.diffuseRoughnessMapTransform))),m.sheen>0&&(p.sheenColor.value.copy(m.sheenColor).multiplyScalar(m.sheen),p.sheenRoughness.value=m.sheenRoughness,m.sheenColorMap&&(p.sheenColorMap.value=m.sheenColorMap,e(m.sheenColorMap,p.sheenColorMapTransform)),m.sheenRoughnessMap&&(p.sheenRoughnessMap.value=m.sheenRoughnessMap,e(m.sheenRoughnessMap,p.sheenRoughnessMapTransform))),m.clearcoat>0&&(p.clearcoat.value=m.clearcoat,p.clearcoatRoughness.value=m.clearcoatRoughness,m.clearcoatMap&&(p.clearcoatMap.value=m.clearcoatMap,e(m.clearcoatMap,p.clearcoatMapTransform)),m.clearcoatRoughnessMap&&(p.clearcoatRoughnessMap.value=m.clearcoatRoughnessMap,e(m.clearcoatRoughnessMap,p.clearcoatRoughnessMapTransform)),m.clearcoatNormalMap&&(p.clearcoatNormalMap.value=m.clearcoatNormalMap,e(m.clearcoatNormalMap,p.clearcoatNormalMapTransform),p.clearcoatNormalScale.value.copy(m.clearcoatNormalScale),m.side===In&&p.clearcoatNormalScale.value.negate())),m.dispersion>0&&(p.dispersion.value=m.dispersion),m.retroreflectivity>0&&(p.retroreflectivity.value=m.retroreflectivity),m.iridescence>0&&(p.iridescence.value=m.iridescence,p.iridescenceIOR.value=m.iridescenceIOR,p.iridescenceThicknessMinimum.value=m.iridescenceThicknessMinimum,p.iridescenceThicknessMaximum.value=m.iridescenceThicknessMaximum,m.iridescenceMap&&(p.iridescenceMap.value=m.iridescenceMap,e(m.iridescenceMap,p.iridescenceMapTransform)),m.iridescenceThicknessMap&&(p.iridescenceThicknessMap.value=m.iridescenceThicknessMap,e(m.iridescenceThicknessMap,p.iridescenceThicknessMapTransform))),m.transmission>0&&(p.transmission.value=m.transmission,p.transmissionSamplerMap.value=v.texture,p.transmissionSamplerSize.value.set(v.width,v.height),m.transmissionMap&&(p.transmissionMap.value=m.transmissionMap,e(m.transmissionMap,p.transmissionMapTransform)),p.thickness.value=m.thickness,m.thicknessMap&&(p.thicknessMap.value=m.thicknessMap,e(m.thicknessMap,p.thicknessMapTransform)),p.attenuationDistance.value=m.attenuationDistance,p.attenuationColor.value.copy(m.attenuationColor)),m.anisotropy>0&&(p.anisotropyVector.value.set(m.anisotropy*Math.cos(m.anisotropyRotation),m.anisotropy*Math.sin(m.anisotropyRotation)),m.anisotropyMap&&(p.anisotropyMap.value=m.anisotropyMap,e(m.anisotropyMap,p.anisotropyMapTransform))),p.specularIntensity.value=m.specularIntensity,p.specularColor.value.copy(m.specularColor),m.specularColorMap&&(p.specularColorMap.value=m.specularColorMap,e(m.specularColorMap,p.specularColorMapTransform)),m.specularIntensityMap&&(p.specularIntensityMap.value=m.specularIntensityMap,e(m.specularIntensityMap,p.specularIntensityMapTransform))}function g(p,m){m.matcap&&(p.matcap.value=m.matcap)}function _(p,m){let v=t.get(m).light;p.referencePosition.value.setFromMatrixPosition(v.matrixWorld),p.nearDistance.value=v.shadow.camera.near,p.farDistance.value=v.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function Qb(i,t,e,n){let s={},r={};function o(v,A){let M=A.program;n.uniformBlockBinding(v,M,s[v.id])}function a(v,A){let M=s[v.id];M===void 0&&(g(v),M=l(v),s[v.id]=M,v.addEventListener("dispose",p));let R=A.program;n.updateUBOMapping(v,R);let w=t.render.frame;r[v.id]!==w&&(c(v),r[v.id]=w)}function l(v){let A=i.createBuffer(),M=v.__size,R=v.usage;return i.bindBuffer(i.UNIFORM_BUFFER,A),i.bufferData(i.UNIFORM_BUFFER,M,R),i.bindBuffer(i.UNIFORM_BUFFER,null),A}function c(v){let A=s[v.id],M=v.uniforms,R=v.__cache;i.bindBuffer(i.UNIFORM_BUFFER,A);for(let w=0,x=M.length;w<x;w++){let b=M[w];if(Array.isArray(b))for(let k=0,N=b.length;k<N;k++)h(b[k],w,k,R);else h(b,w,0,R)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(v,A,M,R){if(d(v,A,M,R)===!0){let w=v.__offset,x=v.value;if(Array.isArray(x)){let b=0;for(let k=0;k<x.length;k++){let N=x[k],L=_(N,!0);u(N,v.__data,b),b+=L.storage/Float32Array.BYTES_PER_ELEMENT}}else u(x,v.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,w,v.__data)}}function u(v,A,M){typeof v=="number"||typeof v=="boolean"?A[M]=v:v.isMatrix3?(A[M]=v.elements[0],A[M+1]=v.elements[1],A[M+2]=v.elements[2],A[M+3]=0,A[M+4]=v.elements[3],A[M+5]=v.elements[4],A[M+6]=v.elements[5],A[M+7]=0,A[M+8]=v.elements[6],A[M+9]=v.elements[7],A[M+10]=v.elements[8],A[M+11]=0):ArrayBuffer.isView(v)?A.set(v.subarray(0,A.length-M),M):v.toArray(A,M)}function d(v,A,M,R){let w=v.value,x=A+"_"+M;if(Array.isArray(w)){R[x]===void 0&&(R[x]=[]);let b=R[x],k=!1;for(let N=0;N<w.length;N++)f(w[N],b,N)===!0&&(k=!0);return k}return f(w,R,x)}function f(v,A,M){if(A[M]===void 0)return typeof v=="number"||typeof v=="boolean"?A[M]=v:ArrayBuffer.isView(v)?A[M]=v.slice():A[M]=v.clone(),!0;{let R=A[M];if(typeof v=="number"||typeof v=="boolean"){if(R!==v)return A[M]=v,!0}else{if(ArrayBuffer.isView(v))return!0;if(R.equals(v)===!1)return R.copy(v),!0}}return!1}function g(v){let A=v.uniforms,M=0,R=16;for(let x=0,b=A.length;x<b;x++){let k=Array.isArray(A[x])?A[x]:[A[x]];for(let N=0,L=k.length;N<L;N++){let G=k[N],U=Array.isArray(G.value)?G.value:[G.value],C=Array.isArray(A[x])||Array.isArray(G.value),B=M;for(let z=0,ot=U.length;z<ot;z++){let $=U[z],j=_($,C),tt=M%R,pt=tt%j.boundary,ht=tt+pt;M+=pt,ht!==0&&R-ht<j.storage&&(M+=R-ht),z===0&&(B=M),M+=j.storage}let X=G.type==="int"?Int32Array:G.type==="uint"?Uint32Array:Float32Array;G.__data=new X((M-B)/Float32Array.BYTES_PER_ELEMENT),G.__offset=B}}let w=M%R;return w>0&&(M+=R-w),v.__size=M,v.__cache={},this}function _(v,A){let M={boundary:0,storage:0};return typeof v=="number"||typeof v=="boolean"?(M.boundary=4,M.storage=4):v.isVector2?(M.boundary=8,M.storage=8):v.isVector3||v.isColor?(M.boundary=16,M.storage=12):v.isVector4?(M.boundary=16,M.storage=16):v.isMatrix3?(M.boundary=16,M.storage=48):v.isMatrix4?(M.boundary=16,M.storage=64):v.isTexture?Yt("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(v)?(M.boundary=16,M.storage=v.byteLength):Yt("WebGLRenderer: Unsupported uniform value type.",v),A===!0&&(M.boundary=16,M.storage=Math.ceil(M.storage/16)*16),M}function p(v){let A=v.target;A.removeEventListener("dispose",p),i.deleteBuffer(s[A.id]),delete s[A.id],delete r[A.id]}function m(){for(let v in s)i.deleteBuffer(s[v]);s={},r={}}return{bind:o,update:a,dispose:m}}var tw=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),qi=null;function ew(){return qi===null&&(qi=new Ll(tw,16,16,ks,Ii),qi.name="DFG_LUT",qi.minFilter=$n,qi.magFilter=$n,qi.wrapS=Hi,qi.wrapT=Hi,qi.generateMipmaps=!1,qi.needsUpdate=!0),qi}var Vc=class{constructor(t={}){let{canvas:e=zm(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:u=!1,reversedDepthBuffer:d=!1,outputBufferType:f=Jn}=t;this.isWebGLRenderer=!0;let g;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");g=n.getContextAttributes().alpha}else g=o;let _=f,p=new Set([oc,rc,sc]),m=new Set([Jn,Ci,oo,ar,nc,ic]),v=new Uint32Array(4),A=new Int32Array(4),M={textures:[],min:[],max:[],resolution:[]},R=null,w=null,x=[],b=[],k=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Xi,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let N=this,L=!1,G=null,U=null,C=null,B=null;this._outputColorSpace=ai;let X=0,z=0,ot=null,$=-1,j=null,tt=new $e,pt=new $e,ht=null,K=new ae(0),mt=0,lt=e.width,ft=e.height,_t=1,Ht=null,jt=null,Vt=new $e(0,0,lt,ft),de=new $e(0,0,lt,ft),ce=!1,se=new Ls,Xe=new Dl,Oe=!1,sn=!1,Le=new We,vn=new W,ve=new $e,fn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Ze=!1;function rn(){return ot===null?_t:1}let O=n;function Pt(T,V){return e.getContext(T,V)}let Zt,oe,Et,Ne,Gt,$t,P,S,q,dt,at,vt,Mt,et,it,xt,F,rt,nt,Tt,yt,bt,Wt;try{let T={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:u};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",Bt,!1),e.addEventListener("webglcontextrestored",Qt,!1),e.addEventListener("webglcontextcreationerror",Ct,!1),O===null){let V="webgl2";if(O=Pt(V,T),O===null)throw Pt(V)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Kt()}catch(T){throw e.removeEventListener("webglcontextlost",Bt,!1),e.removeEventListener("webglcontextrestored",Qt,!1),e.removeEventListener("webglcontextcreationerror",Ct,!1),ee("WebGLRenderer: "+T.message),T}function Kt(){Zt=new dS(O),Zt.init(),yt=new Yb(O,Zt),oe=new eS(O,Zt,t,yt),Et=new qb(O,Zt),oe.reversedDepthBuffer&&d&&Et.buffers.depth.setReversed(!0),U=O.createFramebuffer(),C=O.createFramebuffer(),B=O.createFramebuffer(),Ne=new mS(O),Gt=new Lb,$t=new $b(O,Zt,Et,Gt,oe,yt,Ne),P=new uS(N),S=new _y(O),bt=new QM(O,S),q=new fS(O,S,Ne,bt),dt=new _S(O,q,S,bt,Ne),rt=new gS(O,oe,$t),it=new nS(Gt),at=new Ib(N,P,Zt,oe,bt,it),vt=new Kb(N,Gt),Mt=new Nb,et=new zb(Zt),F=new KM(N,P,Et,dt,g,l),xt=new Xb(N,dt,oe),Wt=new Qb(O,Ne,oe,Et),nt=new tS(O,Zt,Ne),Tt=new pS(O,Zt,Ne),Ne.programs=at.programs,N.capabilities=oe,N.extensions=Zt,N.properties=Gt,N.renderLists=Mt,N.shadowMap=xt,N.state=Et,N.info=Ne}_!==Jn&&(k=new yS(_,e.width,e.height,a,s,r));let ut=new md(N,O);this.xr=ut,this.getContext=function(){return O},this.getContextAttributes=function(){return O.getContextAttributes()},this.forceContextLoss=function(){let T=Zt.get("WEBGL_lose_context");T&&T.loseContext()},this.forceContextRestore=function(){let T=Zt.get("WEBGL_lose_context");T&&T.restoreContext()},this.getPixelRatio=function(){return _t},this.setPixelRatio=function(T){T!==void 0&&(_t=T,this.setSize(lt,ft,!1))},this.getSize=function(T){return T.set(lt,ft)},this.setSize=function(T,V,Q=!0){if(ut.isPresenting){Yt("WebGLRenderer: Can't change size while VR device is presenting.");return}lt=T,ft=V,e.width=Math.floor(T*_t),e.height=Math.floor(V*_t),Q===!0&&(e.style.width=T+"px",e.style.height=V+"px"),k!==null&&k.setSize(e.width,e.height),this.setViewport(0,0,T,V)},this.getDrawingBufferSize=function(T){return T.set(lt*_t,ft*_t).floor()},this.setDrawingBufferSize=function(T,V,Q){lt=T,ft=V,_t=Q,e.width=Math.floor(T*Q),e.height=Math.floor(V*Q),this.setViewport(0,0,T,V)},this.setEffects=function(T){if(_===Jn){ee("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(T){for(let V=0;V<T.length;V++)if(T[V].isOutputPass===!0){Yt("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}k.setEffects(T||[])},this.getCurrentViewport=function(T){return T.copy(tt)},this.getViewport=function(T){return T.copy(Vt)},this.setViewport=function(T,V,Q,Y){T.isVector4?Vt.set(T.x,T.y,T.z,T.w):Vt.set(T,V,Q,Y),Et.viewport(tt.copy(Vt).multiplyScalar(rn()).round())},this.getScissor=function(T){return T.copy(de)},this.setScissor=function(T,V,Q,Y){T.isVector4?de.set(T.x,T.y,T.z,T.w):de.set(T,V,Q,Y),Et.scissor(pt.copy(de).multiplyScalar(rn()).round())},this.getScissorTest=function(){return ce},this.setScissorTest=function(T){Et.setScissorTest(ce=T)},this.setOpaqueSort=function(T){Ht=T},this.setTransparentSort=function(T){jt=T},this.getClearColor=function(T){return T.copy(F.getClearColor())},this.setClearColor=function(){F.setClearColor(...arguments)},this.getClearAlpha=function(){return F.getClearAlpha()},this.setClearAlpha=function(){F.setClearAlpha(...arguments)},this.clear=function(T=!0,V=!0,Q=!0){let Y=0;if(T){let Z=!1;if(ot!==null){let At=ot.texture.format;Z=p.has(At)}if(Z){let At=ot.texture.type,It=m.has(At),Rt=F.getClearColor(),Lt=F.getClearAlpha(),zt=Rt.r,te=Rt.g,fe=Rt.b;It?(v[0]=zt,v[1]=te,v[2]=fe,v[3]=Lt,O.clearBufferuiv(O.COLOR,0,v)):(A[0]=zt,A[1]=te,A[2]=fe,A[3]=Lt,O.clearBufferiv(O.COLOR,0,A))}else Y|=O.COLOR_BUFFER_BIT}V&&(Y|=O.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),Q&&(Y|=O.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),Y!==0&&O.clear(Y)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(T){T.setRenderer(this),G=T},this.dispose=function(){e.removeEventListener("webglcontextlost",Bt,!1),e.removeEventListener("webglcontextrestored",Qt,!1),e.removeEventListener("webglcontextcreationerror",Ct,!1),F.dispose(),Mt.dispose(),et.dispose(),$t.dispose(),Gt.dispose(),P.dispose(),dt.dispose(),q.dispose(),bt.dispose(),Wt.dispose(),at.dispose(),ut.dispose(),ut.removeEventListener("sessionstart",ya),ut.removeEventListener("sessionend",Di),Yi.stop()};function Bt(T){T.preventDefault(),ju("WebGLRenderer: Context Lost."),L=!0}function Qt(){ju("WebGLRenderer: Context Restored."),L=!1;let T=Ne.autoReset,V=xt.enabled,Q=xt.autoUpdate,Y=xt.needsUpdate,Z=xt.type;Kt(),Ne.autoReset=T,xt.enabled=V,xt.autoUpdate=Q,xt.needsUpdate=Y,xt.type=Z}function Ct(T){ee("WebGLRenderer: A WebGL context could not be created. Reason: ",T.statusMessage)}function le(T){let V=T.target;V.removeEventListener("dispose",le),Be(V)}function Be(T){kn(T),Gt.remove(T)}function kn(T){let V=Gt.get(T).programs;V!==void 0&&(V.forEach(function(Q){at.releaseProgram(Q)}),T.isShaderMaterial&&at.releaseShaderCache(T))}this.renderBufferDirect=function(T,V,Q,Y,Z,At){V===null&&(V=fn);let It=Z.isMesh&&Z.matrixWorld.determinantAffine()<0,Rt=po(T,V,Q,Y,Z);Et.setMaterial(Y,It);let Lt=Q.index,zt=1;if(Y.wireframe===!0){if(Lt=q.getWireframeAttribute(Q),Lt===void 0)return;zt=2}let te=Q.drawRange,fe=Q.attributes.position,kt=te.start*zt,pe=(te.start+te.count)*zt;At!==null&&(kt=Math.max(kt,At.start*zt),pe=Math.min(pe,(At.start+At.count)*zt)),Lt!==null?(kt=Math.max(kt,0),pe=Math.min(pe,Lt.count)):fe!=null&&(kt=Math.max(kt,0),pe=Math.min(pe,fe.count));let Ye=pe-kt;if(Ye<0||Ye===1/0)return;bt.setup(Z,Y,Rt,Q,Lt);let Ce,Pe=nt;if(Lt!==null&&(Ce=S.get(Lt),Pe=Tt,Pe.setIndex(Ce)),Z.isMesh)Y.wireframe===!0?(Et.setLineWidth(Y.wireframeLinewidth*rn()),Pe.setMode(O.LINES)):Pe.setMode(O.TRIANGLES);else if(Z.isLine){let pn=Y.linewidth;pn===void 0&&(pn=1),Et.setLineWidth(pn*rn()),Z.isLineSegments?Pe.setMode(O.LINES):Z.isLineLoop?Pe.setMode(O.LINE_LOOP):Pe.setMode(O.LINE_STRIP)}else Z.isPoints?Pe.setMode(O.POINTS):Z.isSprite&&Pe.setMode(O.TRIANGLES);if(Z.isBatchedMesh)if(Zt.get("WEBGL_multi_draw"))Pe.renderMultiDraw(Z._multiDrawStarts,Z._multiDrawCounts,Z._multiDrawCount);else{let pn=Z._multiDrawStarts,Ft=Z._multiDrawCounts,on=Z._multiDrawCount,_e=Lt?S.get(Lt).bytesPerElement:1,Ji=Gt.get(Y).currentProgram.getUniforms();for(let an=0;an<on;an++)Ji.setValue(O,"_gl_DrawID",an),Pe.render(pn[an]/_e,Ft[an])}else if(Z.isInstancedMesh)Pe.renderInstances(kt,Ye,Z.count);else if(Q.isInstancedBufferGeometry){let pn=Q._maxInstanceCount!==void 0?Q._maxInstanceCount:1/0,Ft=Math.min(Q.instanceCount,pn);Pe.renderInstances(kt,Ye,Ft)}else Pe.render(kt,Ye)};function ho(T,V,Q,Y){G!==null&&T.isNodeMaterial&&G.setObject(Y,T),Oe===!0&&it.setState(T,Q,!1),T.transparent===!0&&T.side===Yn&&T.forceSinglePass===!1?(T.side=In,T.needsUpdate=!0,Ni(T,V,Y),T.side=Ri,T.needsUpdate=!0,Ni(T,V,Y),T.side=Yn):Ni(T,V,Y)}this.compile=function(T,V,Q=null){Q===null&&(Q=T),G!==null&&G.renderStart(T,V,Q),w=et.get(Q),w.init(V),b.push(w),Q.traverseVisible(function(Z){Z.isLight&&Z.layers.test(V.layers)&&(w.pushLight(Z),Z.castShadow&&w.pushShadow(Z))}),T!==Q&&T.traverseVisible(function(Z){Z.isLight&&Z.layers.test(V.layers)&&(w.pushLight(Z),Z.castShadow&&w.pushShadow(Z))}),w.setupLights(),G!==null&&G.updateLights(w.state.lightsArray),sn=this.localClippingEnabled,Oe=it.init(this.clippingPlanes,sn),Oe===!0&&it.setGlobalState(this.clippingPlanes,V),G!==null&&xt.render(w.state.shadowsArray,Q,V);let Y=new Set;return T.traverse(function(Z){if(!(Z.isMesh||Z.isPoints||Z.isLine||Z.isSprite))return;let At=Z.material;if(At)if(Array.isArray(At))for(let It=0;It<At.length;It++){let Rt=At[It];ho(Rt,Q,V,Z),Y.add(Rt)}else ho(At,Q,V,Z),Y.add(At)}),w=b.pop(),G!==null&&G.renderEnd(),Y},this.compileAsync=function(T,V,Q=null){let Y=this.compile(T,V,Q);return new Promise(Z=>{function At(){if(Y.forEach(function(It){let Lt=Gt.get(It).currentProgram;(Lt===void 0||Lt.isReady())&&Y.delete(It)}),Y.size===0){Z(T);return}setTimeout(At,10)}Zt.get("KHR_parallel_shader_compile")!==null?At():setTimeout(At,10)})};let cr=null;function sh(T){cr&&cr(T)}function ya(){Yi.stop()}function Di(){Yi.start()}let Yi=new _g;Yi.setAnimationLoop(sh),typeof self<"u"&&Yi.setContext(self),this.setAnimationLoop=function(T){cr=T,ut.setAnimationLoop(T),T===null?Yi.stop():Yi.start()},ut.addEventListener("sessionstart",ya),ut.addEventListener("sessionend",Di),this.render=function(T,V){if(V!==void 0&&V.isCamera!==!0){ee("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(L===!0)return;G!==null&&G.renderStart(T,V);let Q=ut.enabled===!0&&ut.isPresenting===!0,Y=k!==null&&(ot===null||Q)&&k.begin(N,ot);if(T.matrixWorldAutoUpdate===!0&&T.updateMatrixWorld(),V.parent===null&&V.matrixWorldAutoUpdate===!0&&V.updateMatrixWorld(),ut.enabled===!0&&ut.isPresenting===!0&&(k===null||k.isCompositing()===!1)&&(ut.cameraAutoUpdate===!0&&ut.updateCamera(V),V=ut.getCamera()),T.isScene===!0&&T.onBeforeRender(N,T,V,ot),w=et.get(T,b.length),w.init(V),w.state.textureUnits=$t.getTextureUnits(),b.push(w),Le.multiplyMatrices(V.projectionMatrix,V.matrixWorldInverse),V.isArrayCamera?Xe.setFromArrayCamera(V):se.setFromProjectionMatrix(Le,gi,V.reversedDepth),sn=this.localClippingEnabled,Oe=it.init(this.clippingPlanes,sn),R=Mt.get(T,x.length),R.init(),x.push(R),this.info.render.frame++,ut.enabled===!0&&ut.isPresenting===!0){let It=N.xr.getDepthSensingMesh();It!==null&&Zi(It,V,-1/0,N.sortObjects)}Zi(T,V,0,N.sortObjects),R.finish(),G!==null&&G.updateLights(w.state.lightsArray),N.sortObjects===!0&&R.sort(Ht,jt),Ze=ut.enabled===!1||ut.isPresenting===!1||ut.hasDepthSensing()===!1,Ze&&F.addToRenderList(R,T),this.info.autoReset===!0&&this.info.reset(),Oe===!0&&it.beginShadows();let Z=w.state.shadowsArray;if(xt.render(Z,T,V),Oe===!0&&it.endShadows(),(Y&&k.hasRenderPass())===!1){let It=R.opaque,Rt=R.transmissive;if(w.setupLights(),V.isArrayCamera){let Lt=V.cameras;if(Rt.length>0)for(let zt=0,te=Lt.length;zt<te;zt++){let fe=Lt[zt];_i(It,Rt,T,fe)}Ze&&F.render(T);for(let zt=0,te=Lt.length;zt<te;zt++){let fe=Lt[zt];uo(R,T,fe,fe.viewport)}}else Rt.length>0&&_i(It,Rt,T,V),Ze&&F.render(T),uo(R,T,V)}ot!==null&&z===0&&($t.updateMultisampleRenderTarget(ot),$t.updateRenderTargetMipmap(ot)),Y&&k.end(N),T.isScene===!0&&T.onAfterRender(N,T,V),bt.resetDefaultState(),$=-1,j=null,b.pop(),b.length>0?(w=b[b.length-1],$t.setTextureUnits(w.state.textureUnits),Oe===!0&&it.setGlobalState(N.clippingPlanes,w.state.camera)):w=null,x.pop(),x.length>0?R=x[x.length-1]:R=null,G!==null&&G.renderEnd()};function Zi(T,V,Q,Y){if(T.visible===!1)return;if(T.layers.test(V.layers)){if(T.isGroup)Q=T.renderOrder;else if(T.isLOD)T.autoUpdate===!0&&T.update(V);else if(T.isLight)w.pushLight(T),T.castShadow&&w.pushShadow(T);else if(T.isSprite){let It=V.isArrayCamera?Xe:se;if(!T.frustumCulled||T.intersectsFrustum(It)){Y&&ve.setFromMatrixPosition(T.matrixWorld).applyMatrix4(Le);let Rt=dt.update(T),Lt=T.material;Lt.visible&&R.push(T,Rt,Lt,Q,ve.z,null,V)}}else if(T.isMesh||T.isLine||T.isPoints){let It=V.isArrayCamera?Xe:se;if(!T.frustumCulled||T.intersectsFrustum(It)){let Rt=dt.update(T),Lt=T.material;if(Y&&(T.boundingSphere!==void 0?(T.boundingSphere===null&&T.computeBoundingSphere(),ve.copy(T.boundingSphere.center)):(Rt.boundingSphere===null&&Rt.computeBoundingSphere(),ve.copy(Rt.boundingSphere.center)),ve.applyMatrix4(T.matrixWorld).applyMatrix4(Le)),Array.isArray(Lt)){let zt=Rt.groups;for(let te=0,fe=zt.length;te<fe;te++){let kt=zt[te],pe=Lt[kt.materialIndex];pe&&pe.visible&&R.push(T,Rt,pe,Q,ve.z,kt,V)}}else Lt.visible&&R.push(T,Rt,Lt,Q,ve.z,null,V)}}}let At=T.children;for(let It=0,Rt=At.length;It<Rt;It++)Zi(At[It],V,Q,Y)}function uo(T,V,Q,Y){let{opaque:Z,transmissive:At,transparent:It}=T;w.setupLightsView(Q),Oe===!0&&it.setGlobalState(N.clippingPlanes,Q),Y&&Et.viewport(tt.copy(Y)),Z.length>0&&Je(Z,V,Q),At.length>0&&Je(At,V,Q),It.length>0&&Je(It,V,Q),Et.buffers.depth.setTest(!0),Et.buffers.depth.setMask(!0),Et.buffers.color.setMask(!0),Et.setPolygonOffset(!1)}function _i(T,V,Q,Y){if((Q.isScene===!0?Q.overrideMaterial:null)!==null)return;if(w.state.transmissionRenderTarget[Y.id]===void 0){let kt=Zt.has("EXT_color_buffer_half_float")||Zt.has("EXT_color_buffer_float");w.state.transmissionRenderTarget[Y.id]=new ci(1,1,{generateMipmaps:!0,type:kt?Ii:Jn,minFilter:ds,samples:Math.max(4,oe.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:ye.workingColorSpace})}let At=w.state.transmissionRenderTarget[Y.id],It=Y.viewport||tt;At.setSize(It.z*N.transmissionResolutionScale,It.w*N.transmissionResolutionScale);let Rt=N.getRenderTarget(),Lt=N.getActiveCubeFace(),zt=N.getActiveMipmapLevel();N.setRenderTarget(At),N.getClearColor(K),mt=N.getClearAlpha(),mt<1&&N.setClearColor(16777215,.5),N.clear(),Ze&&F.render(Q);let te=N.toneMapping;N.toneMapping=Xi;let fe=Y.viewport;if(Y.viewport!==void 0&&(Y.viewport=void 0),w.setupLightsView(Y),Oe===!0&&it.setGlobalState(N.clippingPlanes,Y),Je(T,Q,Y),$t.updateMultisampleRenderTarget(At),$t.updateRenderTargetMipmap(At),Zt.has("WEBGL_multisampled_render_to_texture")===!1){let kt=!1;for(let pe=0,Ye=V.length;pe<Ye;pe++){let Ce=V[pe],{object:Pe,geometry:pn,material:Ft,group:on}=Ce;if(Ft.side===Yn&&Pe.layers.test(Y.layers)){let _e=Ft.side;Ft.side=In,Ft.needsUpdate=!0,tn(Pe,Q,Y,pn,Ft,on),Ft.side=_e,Ft.needsUpdate=!0,kt=!0}}kt===!0&&($t.updateMultisampleRenderTarget(At),$t.updateRenderTargetMipmap(At))}N.setRenderTarget(Rt,Lt,zt),N.setClearColor(K,mt),fe!==void 0&&(Y.viewport=fe),N.toneMapping=te}function Je(T,V,Q){let Y=V.isScene===!0?V.overrideMaterial:null;for(let Z=0,At=T.length;Z<At;Z++){let It=T[Z],{object:Rt,geometry:Lt,group:zt}=It,te=It.material;te.allowOverride===!0&&Y!==null&&(te=Y),Rt.layers.test(Q.layers)&&tn(Rt,V,Q,Lt,te,zt)}}function tn(T,V,Q,Y,Z,At){G!==null&&Z.isNodeMaterial&&G.setObject(T,Z),T.onBeforeRender(N,V,Q,Y,Z,At),T.modelViewMatrix.multiplyMatrices(Q.matrixWorldInverse,T.matrixWorld),T.normalMatrix.getNormalMatrix(T.modelViewMatrix),Z.onBeforeRender(N,V,Q,Y,T,At),Z.transparent===!0&&Z.side===Yn&&Z.forceSinglePass===!1?(Z.side=In,Z.needsUpdate=!0,N.renderBufferDirect(Q,V,Y,Z,T,At),Z.side=Ri,Z.needsUpdate=!0,N.renderBufferDirect(Q,V,Y,Z,T,At),Z.side=Yn):N.renderBufferDirect(Q,V,Y,Z,T,At),T.onAfterRender(N,V,Q,Y,Z,At)}function en(T){let V=0;for(let Q of T)Q.texture!==null&&V++;return V}function Ni(T,V,Q){V.isScene!==!0&&(V=fn);let Y=Gt.get(T),Z=w.state.lights,At=w.state.shadowsArray,It=Z.state.version,Rt=at.getParameters(T,Z.state,At,V,Q,w.state.lightProbeGridArray),Lt=at.getProgramCacheKey(Rt),zt=Y.programs;Y.environment=T.isMeshStandardMaterial||T.isMeshLambertMaterial||T.isMeshPhongMaterial?V.environment:null,Y.fog=V.fog;let te=T.isMeshStandardMaterial||T.isMeshLambertMaterial&&!T.envMap||T.isMeshPhongMaterial&&!T.envMap;Y.envMap=P.get(T.envMap||Y.environment,te),Y.envMapRotation=Y.environment!==null&&T.envMap===null?V.environmentRotation:T.envMapRotation,zt===void 0&&(T.addEventListener("dispose",le),zt=new Map,Y.programs=zt,Y.programVariants=new Map);let fe=zt.get(Lt);if(fe!==void 0){if(Y.currentProgram===fe&&Y.lightsStateVersion===It)return fo(T,Rt),fe}else Rt.uniforms=at.getUniforms(T),G!==null&&T.isNodeMaterial&&G.build(T,Q,Rt),T.onBeforeCompile(Rt,N),fe=at.acquireProgram(Rt,Lt),zt.set(Lt,fe),Y.uniforms=Rt.uniforms;let kt=Y.uniforms;return(!T.isShaderMaterial&&!T.isRawShaderMaterial||T.clipping===!0)&&(kt.clippingPlanes=it.uniform),fo(T,Rt),Y.needsLights=gs(T),Y.lightsStateVersion=It,Y.needsLights&&(kt.ambientLightColor.value=Z.state.ambient,kt.lightProbe.value=Z.state.probe,kt.sunLights.value=Z.state.sun,kt.sunLightShadows.value=Z.state.sunShadow,kt.directionalLights.value=Z.state.directional,kt.directionalLightShadows.value=Z.state.directionalShadow,kt.spotLights.value=Z.state.spot,kt.spotLightShadows.value=Z.state.spotShadow,kt.rectAreaLights.value=Z.state.rectArea,kt.ltc_1.value=Z.state.rectAreaLTC1,kt.ltc_2.value=Z.state.rectAreaLTC2,kt.pointLights.value=Z.state.point,kt.pointLightShadows.value=Z.state.pointShadow,kt.hemisphereLights.value=Z.state.hemi,kt.sunShadowMatrix.value=Z.state.sunShadowMatrix,kt.sunShadowCascade.value=Z.state.sunShadowCascade,kt.directionalShadowMatrix.value=Z.state.directionalShadowMatrix,kt.spotLightMatrix.value=Z.state.spotLightMatrix,kt.spotLightMap.value=Z.state.spotLightMap,kt.pointShadowMatrix.value=Z.state.pointShadowMatrix),Y.numLightProbeGrids=en(w.state.lightProbeGridArray),Y.currentProgram=fe,Y.uniformsList=null,fe}function Kn(T,V,Q,Y,Z){let At=Gt.get(T),It=At.currentProgram.id+","+Y+","+Z,Rt=At.programVariants.get(It);return Rt===void 0?(Rt=Ni(T,V,Q),At.programVariants.set(It,Rt)):(At.currentProgram=Rt,At.uniformsList=null,At.outputColorSpace=Y,At.toneMapping=Z),Rt}function ms(T){if(T.uniformsList===null){let V=T.currentProgram.getUniforms();T.uniformsList=lo.seqWithValue(V.seq,T.uniforms)}return T.uniformsList}function fo(T,V){let Q=Gt.get(T);Q.outputColorSpace=V.outputColorSpace,Q.batching=V.batching,Q.batchingColor=V.batchingColor,Q.instancing=V.instancing,Q.instancingColor=V.instancingColor,Q.instancingMorph=V.instancingMorph,Q.skinning=V.skinning,Q.morphTargets=V.morphTargets,Q.morphNormals=V.morphNormals,Q.morphColors=V.morphColors,Q.morphTargetsCount=V.morphTargetsCount,Q.numClippingPlanes=V.numClippingPlanes,Q.numIntersection=V.numClipIntersection,Q.vertexAlphas=V.vertexAlphas,Q.vertexTangents=V.vertexTangents,Q.toneMapping=V.toneMapping}function po(T,V,Q,Y,Z){V.isScene!==!0&&(V=fn),$t.resetTextureUnits();let At=V.fog,It=Y.isMeshStandardMaterial||Y.isMeshLambertMaterial||Y.isMeshPhongMaterial?V.environment:null,Rt=ot===null?N.outputColorSpace:ot.isXRRenderTarget===!0?ot.texture.colorSpace:ye.workingColorSpace,Lt=Y.isMeshStandardMaterial||Y.isMeshLambertMaterial&&!Y.envMap||Y.isMeshPhongMaterial&&!Y.envMap,zt=P.get(Y.envMap||It,Lt),te=Y.vertexColors===!0&&!!Q.attributes.color&&Q.attributes.color.itemSize===4,fe=!!Q.attributes.tangent&&(!!Y.normalMap||Y.anisotropy>0),kt=!!Q.morphAttributes.position,pe=!!Q.morphAttributes.normal,Ye=!!Q.morphAttributes.color,Ce=Xi;Y.toneMapped&&(ot===null||ot.isXRRenderTarget===!0)&&(Ce=N.toneMapping);let Pe=Q.morphAttributes.position||Q.morphAttributes.normal||Q.morphAttributes.color,pn=Pe!==void 0?Pe.length:0,Ft=Gt.get(Y),on=w.state.lights;if(Oe===!0&&(sn===!0||T!==j)){let Ie=T===j&&Y.id===$;it.setState(Y,T,Ie)}let _e=!1,Ji=!1;Y.version===Ft.__version?Ft.needsLights&&Ft.lightsStateVersion!==on.state.version||Z.isBatchedMesh&&Ft.batching===!1||!Z.isBatchedMesh&&Ft.batching===!0||Z.isBatchedMesh&&Ft.batchingColor===!0&&Z._colorsTexture===null||Z.isBatchedMesh&&Ft.batchingColor===!1&&Z._colorsTexture!==null||Z.isInstancedMesh&&Ft.instancing===!1||!Z.isInstancedMesh&&Ft.instancing===!0||Z.isSkinnedMesh&&Ft.skinning===!1||!Z.isSkinnedMesh&&Ft.skinning===!0||Z.isInstancedMesh&&Ft.instancingColor===!0&&Z.instanceColor===null||Z.isInstancedMesh&&Ft.instancingColor===!1&&Z.instanceColor!==null||Z.isInstancedMesh&&Ft.instancingMorph===!0&&Z.morphTexture===null||Z.isInstancedMesh&&Ft.instancingMorph===!1&&Z.morphTexture!==null||Ft.envMap!==zt||Y.fog===!0&&Ft.fog!==At||Ft.numClippingPlanes!==void 0&&(Ft.numClippingPlanes!==it.numPlanes||Ft.numIntersection!==it.numIntersection)||Ft.vertexAlphas!==te||Ft.vertexTangents!==fe||Ft.morphTargets!==kt||Ft.morphNormals!==pe||Ft.morphColors!==Ye||Ft.morphTargetsCount!==pn||Ft.numLightProbeGrids!==en(w.state.lightProbeGridArray)?_e=!0:(Ft.outputColorSpace!==Rt||Ft.toneMapping!==Ce)&&(Ji=!0):(_e=!0,Ft.__version=Y.version);let an=Ft.currentProgram;(_e===!0||Ji===!0)&&(an=Ji===!0?Kn(Y,V,Z,Rt,Ce):Ni(Y,V,Z),G&&Y.isNodeMaterial&&G.onUpdateProgram(Y,an,Ft));let dr=!1,Ui=!1,ji=!1,he=an.getUniforms(),je=Ft.uniforms;if(Et.useProgram(an.program)&&(dr=!0,Ui=!0,ji=!0),Y.id!==$&&($=Y.id,Ui=!0),dr||j!==T){Et.buffers.depth.getReversed()&&T.reversedDepth!==!0&&(T._reversedDepth=!0,T.updateProjectionMatrix()),he.setValue(O,"projectionMatrix",T.projectionMatrix),he.setValue(O,"viewMatrix",T.matrixWorldInverse);let ln=he.map.cameraPosition;ln!==void 0&&ln.setValue(O,vn.setFromMatrixPosition(T.matrixWorld)),oe.logarithmicDepthBuffer&&he.setValue(O,"logDepthBufFC",2/(Math.log(T.far+1)/Math.LN2)),(Y.isMeshPhongMaterial||Y.isMeshToonMaterial||Y.isMeshLambertMaterial||Y.isMeshBasicMaterial||Y.isMeshStandardMaterial||Y.isShaderMaterial)&&he.setValue(O,"isOrthographic",T.isOrthographicCamera===!0),j!==T&&(j=T,Ui=!0,ji=!0)}if(Ft.needsLights&&(on.state.sunShadowMap.length>0&&he.setValue(O,"sunShadowMap",on.state.sunShadowMap,$t),on.state.directionalShadowMap.length>0&&he.setValue(O,"directionalShadowMap",on.state.directionalShadowMap,$t),on.state.spotShadowMap.length>0&&he.setValue(O,"spotShadowMap",on.state.spotShadowMap,$t),on.state.pointShadowMap.length>0&&he.setValue(O,"pointShadowMap",on.state.pointShadowMap,$t)),Z.isSkinnedMesh){he.setOptional(O,Z,"bindMatrix"),he.setOptional(O,Z,"bindMatrixInverse");let Ie=Z.skeleton;Ie&&(Ie.boneTexture===null&&Ie.computeBoneTexture(),he.setValue(O,"boneTexture",Ie.boneTexture,$t))}Z.isBatchedMesh&&(he.setOptional(O,Z,"batchingTexture"),he.setValue(O,"batchingTexture",Z._matricesTexture,$t),he.setOptional(O,Z,"batchingIdTexture"),he.setValue(O,"batchingIdTexture",Z._indirectTexture,$t),he.setOptional(O,Z,"batchingColorTexture"),Z._colorsTexture!==null&&he.setValue(O,"batchingColorTexture",Z._colorsTexture,$t));let zn=Q.morphAttributes;if((zn.position!==void 0||zn.normal!==void 0||zn.color!==void 0)&&rt.update(Z,Q,an),(Ui||Ft.receiveShadow!==Z.receiveShadow)&&(Ft.receiveShadow=Z.receiveShadow,he.setValue(O,"receiveShadow",Z.receiveShadow)),(Y.isMeshStandardMaterial||Y.isMeshLambertMaterial||Y.isMeshPhongMaterial)&&Y.envMap===null&&V.environment!==null&&(je.envMapIntensity.value=V.environmentIntensity),je.dfgLUT!==void 0&&(je.dfgLUT.value=ew()),Ui){if(he.setValue(O,"toneMappingExposure",N.toneMappingExposure),Ft.needsLights&&hr(je,ji),At&&Y.fog===!0&&vt.refreshFogUniforms(je,At),vt.refreshMaterialUniforms(je,Y,_t,ft,w.state.transmissionRenderTarget[T.id]),Ft.needsLights&&Ft.numLightProbeGrids>0){let Ie=M,ln=0;for(let Ln of w.state.lightProbeGridArray)Ln.texture!==null&&(Ie.textures[ln]=Ln.texture,Ie.min[ln]=Ln.boundingBox.min,Ie.max[ln]=Ln.boundingBox.max,Ie.resolution[ln]=Ln.resolution,ln++);for(let Ln in Ie)Ie[Ln].length=ln;je.probesSH.value=Ie.textures,je.probesMin.value=Ie.min,je.probesMax.value=Ie.max,je.probesResolution.value=Ie.resolution}lo.upload(O,ms(Ft),je,$t)}if(Y.isShaderMaterial&&Y.uniformsNeedUpdate===!0&&(lo.upload(O,ms(Ft),je,$t),Y.uniformsNeedUpdate=!1),Y.isSpriteMaterial&&he.setValue(O,"center",Z.center),he.setValue(O,"modelViewMatrix",Z.modelViewMatrix),he.setValue(O,"normalMatrix",Z.normalMatrix),he.setValue(O,"modelMatrix",Z.matrixWorld),Y.uniformsGroups!==void 0){let Ie=Y.uniformsGroups;for(let ln=0,Ln=Ie.length;ln<Ln;ln++){let va=Ie[ln];Wt.update(va,an),Wt.bind(va,an)}}return an}function hr(T,V){T.ambientLightColor.needsUpdate=V,T.lightProbe.needsUpdate=V,T.sunLights.needsUpdate=V,T.sunLightShadows.needsUpdate=V,T.directionalLights.needsUpdate=V,T.directionalLightShadows.needsUpdate=V,T.pointLights.needsUpdate=V,T.pointLightShadows.needsUpdate=V,T.spotLights.needsUpdate=V,T.spotLightShadows.needsUpdate=V,T.rectAreaLights.needsUpdate=V,T.hemisphereLights.needsUpdate=V}function gs(T){return T.isMeshLambertMaterial||T.isMeshToonMaterial||T.isMeshPhongMaterial||T.isMeshStandardMaterial||T.isShadowMaterial||T.isShaderMaterial&&T.lights===!0}this.getActiveCubeFace=function(){return X},this.getActiveMipmapLevel=function(){return z},this.getRenderTarget=function(){return ot},this.setRenderTargetTextures=function(T,V,Q){let Y=Gt.get(T);Y.__autoAllocateDepthBuffer=T.resolveDepthBuffer===!1,Y.__autoAllocateDepthBuffer===!1&&(Y.__useRenderToTexture=!1),Gt.get(T.texture).__webglTexture=V,Gt.get(T.depthTexture).__webglTexture=Y.__autoAllocateDepthBuffer?void 0:Q,Y.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(T,V){let Q=Gt.get(T);Q.__webglFramebuffer=V,Q.__useDefaultFramebuffer=V===void 0},this.setRenderTarget=function(T,V=0,Q=0){ot=T,X=V,z=Q;let Y=null,Z=!1,At=!1;if(T){let Rt=Gt.get(T);if(Rt.__useDefaultFramebuffer!==void 0){Et.bindFramebuffer(O.FRAMEBUFFER,Rt.__webglFramebuffer),tt.copy(T.viewport),pt.copy(T.scissor),ht=T.scissorTest,Et.viewport(tt),Et.scissor(pt),Et.setScissorTest(ht),$=-1;return}else if(Rt.__webglFramebuffer===void 0)$t.setupRenderTarget(T);else if(Rt.__hasExternalTextures)$t.rebindTextures(T,Gt.get(T.texture).__webglTexture,Gt.get(T.depthTexture).__webglTexture);else if(T.depthBuffer){let te=T.depthTexture;if(Rt.__boundDepthTexture!==te){if(te!==null&&Gt.has(te)&&(T.width!==te.image.width||T.height!==te.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");$t.setupDepthRenderbuffer(T)}}let Lt=T.texture;(Lt.isData3DTexture||Lt.isDataArrayTexture||Lt.isCompressedArrayTexture)&&(At=!0);let zt=Gt.get(T).__webglFramebuffer;T.isWebGLCubeRenderTarget?(Array.isArray(zt[V])?Y=zt[V][Q]:Y=zt[V],Z=!0):T.samples>0&&$t.useMultisampledRTT(T)===!1?Y=Gt.get(T).__webglMultisampledFramebuffer:Array.isArray(zt)?Y=zt[Q]:Y=zt,tt.copy(T.viewport),pt.copy(T.scissor),ht=T.scissorTest}else tt.copy(Vt).multiplyScalar(_t).floor(),pt.copy(de).multiplyScalar(_t).floor(),ht=ce;if(Q!==0&&(Y=U),Et.bindFramebuffer(O.FRAMEBUFFER,Y)&&Et.drawBuffers(T,Y),Et.viewport(tt),Et.scissor(pt),Et.setScissorTest(ht),Z){let Rt=Gt.get(T.texture);O.framebufferTexture2D(O.FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_CUBE_MAP_POSITIVE_X+V,Rt.__webglTexture,Q)}else if(At){let Rt=V;for(let Lt=0;Lt<T.textures.length;Lt++){let zt=Gt.get(T.textures[Lt]);O.framebufferTextureLayer(O.FRAMEBUFFER,O.COLOR_ATTACHMENT0+Lt,zt.__webglTexture,Q,Rt)}}else if(T!==null&&Q!==0){let Rt=Gt.get(T.texture);O.framebufferTexture2D(O.FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_2D,Rt.__webglTexture,Q)}$=-1};function ur(T){let V=Gt.get(T);return(V.__readFormat!==T.format||V.__readType!==T.type)&&(V.__readFormat=T.format,V.__readType=T.type,V.__formatReadable=oe.textureFormatReadable(T.format),V.__typeReadable=oe.textureTypeReadable(T.type)),V}this.readRenderTargetPixels=function(T,V,Q,Y,Z,At,It,Rt=0){if(!(T&&T.isWebGLRenderTarget)){ee("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let Lt=Gt.get(T).__webglFramebuffer;if(T.isWebGLCubeRenderTarget&&It!==void 0&&(Lt=Lt[It],Array.isArray(Lt)&&(Lt=Lt[0])),Lt){Et.bindFramebuffer(O.FRAMEBUFFER,Lt);try{let zt=T.textures[Rt],te=zt.format,fe=zt.type;T.textures.length>1&&O.readBuffer(O.COLOR_ATTACHMENT0+Rt);let kt=ur(zt);if(kt.__formatReadable===!1){ee("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(kt.__typeReadable===!1){ee("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}V>=0&&V<=T.width-Y&&Q>=0&&Q<=T.height-Z&&O.readPixels(V,Q,Y,Z,yt.convert(te),yt.convert(fe),At)}finally{let zt=ot!==null?Gt.get(ot).__webglFramebuffer:null;Et.bindFramebuffer(O.FRAMEBUFFER,zt)}}},this.readRenderTargetPixelsAsync=async function(T,V,Q,Y,Z,At,It,Rt=0){if(!(T&&T.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let Lt=Gt.get(T).__webglFramebuffer;if(T.isWebGLCubeRenderTarget&&It!==void 0&&(Lt=Lt[It],Array.isArray(Lt)&&(Lt=Lt[0])),Lt)if(V>=0&&V<=T.width-Y&&Q>=0&&Q<=T.height-Z){Et.bindFramebuffer(O.FRAMEBUFFER,Lt);let zt=T.textures[Rt],te=zt.format,fe=zt.type;T.textures.length>1&&O.readBuffer(O.COLOR_ATTACHMENT0+Rt);let kt=ur(zt);if(kt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(kt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let pe=O.createBuffer();O.bindBuffer(O.PIXEL_PACK_BUFFER,pe),O.bufferData(O.PIXEL_PACK_BUFFER,At.byteLength,O.STREAM_READ),O.readPixels(V,Q,Y,Z,yt.convert(te),yt.convert(fe),0),O.bindBuffer(O.PIXEL_PACK_BUFFER,null);let Ye=ot!==null?Gt.get(ot).__webglFramebuffer:null;Et.bindFramebuffer(O.FRAMEBUFFER,Ye);let Ce=O.fenceSync(O.SYNC_GPU_COMMANDS_COMPLETE,0);return O.flush(),await Gm(O,Ce,4),O.bindBuffer(O.PIXEL_PACK_BUFFER,pe),O.getBufferSubData(O.PIXEL_PACK_BUFFER,0,At),O.bindBuffer(O.PIXEL_PACK_BUFFER,null),O.deleteBuffer(pe),O.deleteSync(Ce),At}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(T,V=null,Q=0){let Y=Math.pow(2,-Q),Z=Math.floor(T.image.width*Y),At=Math.floor(T.image.height*Y),It=V!==null?V.x:0,Rt=V!==null?V.y:0;$t.setTexture2D(T,0),O.copyTexSubImage2D(O.TEXTURE_2D,Q,0,0,It,Rt,Z,At),Et.unbindTexture()},this.copyTextureToTexture=function(T,V,Q=null,Y=null,Z=0,At=0){let It,Rt,Lt,zt,te,fe,kt,pe,Ye,Ce=T.isCompressedTexture?T.mipmaps[At]:T.image;if(Q!==null)It=Q.max.x-Q.min.x,Rt=Q.max.y-Q.min.y,Lt=Q.isBox3?Q.max.z-Q.min.z:1,zt=Q.min.x,te=Q.min.y,fe=Q.isBox3?Q.min.z:0;else{let he=Math.pow(2,-Z);It=Math.floor(Ce.width*he),Rt=Math.floor(Ce.height*he),T.isDataArrayTexture?Lt=Ce.depth:T.isData3DTexture?Lt=Math.floor(Ce.depth*he):Lt=1,zt=0,te=0,fe=0}Y!==null?(kt=Y.x,pe=Y.y,Ye=Y.z):(kt=0,pe=0,Ye=0);let Pe=yt.convert(V.format),pn=yt.convert(V.type),Ft;V.isData3DTexture?($t.setTexture3D(V,0),Ft=O.TEXTURE_3D):V.isDataArrayTexture||V.isCompressedArrayTexture?($t.setTexture2DArray(V,0),Ft=O.TEXTURE_2D_ARRAY):($t.setTexture2D(V,0),Ft=O.TEXTURE_2D),Et.activeTexture(O.TEXTURE0),Et.pixelStorei(O.UNPACK_FLIP_Y_WEBGL,V.flipY),Et.pixelStorei(O.UNPACK_PREMULTIPLY_ALPHA_WEBGL,V.premultiplyAlpha),Et.pixelStorei(O.UNPACK_ALIGNMENT,V.unpackAlignment);let on=Et.getParameter(O.UNPACK_ROW_LENGTH),_e=Et.getParameter(O.UNPACK_IMAGE_HEIGHT),Ji=Et.getParameter(O.UNPACK_SKIP_PIXELS),an=Et.getParameter(O.UNPACK_SKIP_ROWS),dr=Et.getParameter(O.UNPACK_SKIP_IMAGES);Et.pixelStorei(O.UNPACK_ROW_LENGTH,Ce.width),Et.pixelStorei(O.UNPACK_IMAGE_HEIGHT,Ce.height),Et.pixelStorei(O.UNPACK_SKIP_PIXELS,zt),Et.pixelStorei(O.UNPACK_SKIP_ROWS,te),Et.pixelStorei(O.UNPACK_SKIP_IMAGES,fe);let Ui=T.isDataArrayTexture||T.isData3DTexture,ji=V.isDataArrayTexture||V.isData3DTexture;if(T.isDepthTexture){let he=Gt.get(T),je=Gt.get(V),zn=Gt.get(he.__renderTarget),Ie=Gt.get(je.__renderTarget);Et.bindFramebuffer(O.READ_FRAMEBUFFER,zn.__webglFramebuffer),Et.bindFramebuffer(O.DRAW_FRAMEBUFFER,Ie.__webglFramebuffer);for(let ln=0;ln<Lt;ln++)Ui&&(O.framebufferTextureLayer(O.READ_FRAMEBUFFER,O.COLOR_ATTACHMENT0,Gt.get(T).__webglTexture,Z,fe+ln),O.framebufferTextureLayer(O.DRAW_FRAMEBUFFER,O.COLOR_ATTACHMENT0,Gt.get(V).__webglTexture,At,Ye+ln)),O.blitFramebuffer(zt,te,zt+It,te+Rt,kt,pe,kt+It,pe+Rt,O.DEPTH_BUFFER_BIT,O.NEAREST);Et.bindFramebuffer(O.READ_FRAMEBUFFER,null),Et.bindFramebuffer(O.DRAW_FRAMEBUFFER,null)}else if(Z!==0||T.isRenderTargetTexture||Gt.has(T)){let he=Gt.get(T),je=Gt.get(V);Et.bindFramebuffer(O.READ_FRAMEBUFFER,C),Et.bindFramebuffer(O.DRAW_FRAMEBUFFER,B);for(let zn=0;zn<Lt;zn++)Ui?O.framebufferTextureLayer(O.READ_FRAMEBUFFER,O.COLOR_ATTACHMENT0,he.__webglTexture,Z,fe+zn):O.framebufferTexture2D(O.READ_FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_2D,he.__webglTexture,Z),ji?O.framebufferTextureLayer(O.DRAW_FRAMEBUFFER,O.COLOR_ATTACHMENT0,je.__webglTexture,At,Ye+zn):O.framebufferTexture2D(O.DRAW_FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_2D,je.__webglTexture,At),Z!==0?O.blitFramebuffer(zt,te,zt+It,te+Rt,kt,pe,kt+It,pe+Rt,O.COLOR_BUFFER_BIT,O.NEAREST):ji?O.copyTexSubImage3D(Ft,At,kt,pe,Ye+zn,zt,te,It,Rt):O.copyTexSubImage2D(Ft,At,kt,pe,zt,te,It,Rt);Et.bindFramebuffer(O.READ_FRAMEBUFFER,null),Et.bindFramebuffer(O.DRAW_FRAMEBUFFER,null)}else ji?T.isDataTexture||T.isData3DTexture?O.texSubImage3D(Ft,At,kt,pe,Ye,It,Rt,Lt,Pe,pn,Ce.data):V.isCompressedArrayTexture?O.compressedTexSubImage3D(Ft,At,kt,pe,Ye,It,Rt,Lt,Pe,Ce.data):O.texSubImage3D(Ft,At,kt,pe,Ye,It,Rt,Lt,Pe,pn,Ce):T.isDataTexture?O.texSubImage2D(O.TEXTURE_2D,At,kt,pe,It,Rt,Pe,pn,Ce.data):T.isCompressedTexture?O.compressedTexSubImage2D(O.TEXTURE_2D,At,kt,pe,Ce.width,Ce.height,Pe,Ce.data):O.texSubImage2D(O.TEXTURE_2D,At,kt,pe,It,Rt,Pe,pn,Ce);Et.pixelStorei(O.UNPACK_ROW_LENGTH,on),Et.pixelStorei(O.UNPACK_IMAGE_HEIGHT,_e),Et.pixelStorei(O.UNPACK_SKIP_PIXELS,Ji),Et.pixelStorei(O.UNPACK_SKIP_ROWS,an),Et.pixelStorei(O.UNPACK_SKIP_IMAGES,dr),At===0&&V.generateMipmaps===!0&&V.mipmapsAutoUpdate===!0&&O.generateMipmap(Ft),Et.unbindTexture()},this.initRenderTarget=function(T){Gt.get(T).__webglFramebuffer===void 0&&$t.setupRenderTarget(T)},this.initTexture=function(T){T.isCubeTexture?$t.setTextureCube(T,0):T.isData3DTexture?$t.setTexture3D(T,0):T.isDataArrayTexture||T.isCompressedArrayTexture?$t.setTexture2DArray(T,0):$t.setTexture2D(T,0),Et.unbindTexture()},this.resetState=function(){X=0,z=0,ot=null,Et.reset(),bt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return gi}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=ye._getDrawingBufferColorSpace(t),e.unpackColorSpace=ye._getUnpackColorSpace()}};var Rg={type:"change"},_d={type:"start"},Pg={type:"end"},Wc=new nr,Cg=new Xn,nw=Math.cos(70*ed.DEG2RAD),yn=new W,jn=2*Math.PI,Te={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},gd=1e-6,Xc=class extends sa{constructor(t,e=null){super(t,e),this.state=Te.NONE,this.target=new W,this.cursor=new W,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Os.ROTATE,MIDDLE:Os.DOLLY,RIGHT:Os.PAN},this.touches={ONE:Bs.ROTATE,TWO:Bs.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new W,this._lastQuaternion=new li,this._lastTargetPosition=new W,this._quat=new li().setFromUnitVectors(t.up,new W(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new no,this._sphericalDelta=new no,this._scale=1,this._panOffset=new W,this._rotateStart=new ne,this._rotateEnd=new ne,this._rotateDelta=new ne,this._panStart=new ne,this._panEnd=new ne,this._panDelta=new ne,this._dollyStart=new ne,this._dollyEnd=new ne,this._dollyDelta=new ne,this._dollyDirection=new W,this._mouse=new ne,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=sw.bind(this),this._onPointerDown=iw.bind(this),this._onPointerUp=rw.bind(this),this._onContextMenu=dw.bind(this),this._onMouseWheel=lw.bind(this),this._onKeyDown=cw.bind(this),this._onTouchStart=hw.bind(this),this._onTouchMove=uw.bind(this),this._onMouseDown=ow.bind(this),this._onMouseMove=aw.bind(this),this._interceptControlDown=fw.bind(this),this._interceptControlUp=pw.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Te.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(Rg),this.update(),this.state=Te.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;yn.copy(e).sub(this.target),yn.applyQuaternion(this._quat),this._spherical.setFromVector3(yn),this.autoRotate&&this.state===Te.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=jn:n>Math.PI&&(n-=jn),s<-Math.PI?s+=jn:s>Math.PI&&(s-=jn),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(yn.setFromSpherical(this._spherical),yn.applyQuaternion(this._quatInverse),e.copy(this.target).add(yn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=yn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new W(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new W(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=yn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(Wc.origin.copy(this.object.position),Wc.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(Wc.direction))<nw?this.object.lookAt(this.target):(Cg.setFromNormalAndCoplanarPoint(this.object.up,this.target),Wc.intersectPlane(Cg,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>gd||8*(1-this._lastQuaternion.dot(this.object.quaternion))>gd||this._lastTargetPosition.distanceToSquared(this.target)>gd?(this.dispatchEvent(Rg),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?jn/60*this.autoRotateSpeed*t:jn/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){yn.setFromMatrixColumn(e,0),yn.multiplyScalar(-t),this._panOffset.add(yn)}_panUp(t,e){this.screenSpacePanning===!0?yn.setFromMatrixColumn(e,1):(yn.setFromMatrixColumn(e,0),yn.crossVectors(this.object.up,yn)),yn.multiplyScalar(t),this._panOffset.add(yn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;yn.copy(s).sub(this.target);let r=yn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(jn*this._rotateDelta.x/e.clientHeight),this._rotateUp(jn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(jn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-jn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(jn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-jn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(jn*this._rotateDelta.x/e.clientHeight),this._rotateUp(jn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new ne,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function iw(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function sw(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function rw(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(Pg),this.state=Te.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function ow(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Os.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Te.DOLLY;break;case Os.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Te.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Te.ROTATE}break;case Os.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Te.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Te.PAN}break;default:this.state=Te.NONE}this.state!==Te.NONE&&this.dispatchEvent(_d)}function aw(i){switch(this.state){case Te.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Te.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Te.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function lw(i){this.enabled===!1||this.enableZoom===!1||this.state!==Te.NONE||(i.preventDefault(),this.dispatchEvent(_d),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(Pg))}function cw(i){this.enabled!==!1&&this._handleKeyDown(i)}function hw(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case Bs.ROTATE:if(this.enableRotate===!1){this.state=Te.NONE;break}this._handleTouchStartRotate(i),this.state=Te.TOUCH_ROTATE;break;case Bs.PAN:if(this.enablePan===!1){this.state=Te.NONE;break}this._handleTouchStartPan(i),this.state=Te.TOUCH_PAN;break;default:this.state=Te.NONE}break;case 2:switch(this.touches.TWO){case Bs.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Te.TOUCH_DOLLY_PAN;break;case Bs.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Te.TOUCH_DOLLY_ROTATE;break;default:this.state=Te.NONE}break;default:this.state=Te.NONE}this.state!==Te.NONE&&this.dispatchEvent(_d)}function uw(i){switch(this._trackPointer(i),this.state){case Te.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Te.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Te.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Te.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Te.NONE}}function dw(i){this.enabled!==!1&&i.preventDefault()}function fw(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function pw(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var xd=Math.PI/36,mw=.06,Ig=1.15,Lg=.02;function Dg(i,t,e){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let{target:n}=e,s=t.position.clone().sub(n),r={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[i.key];if(r){let[o,a]=r,l=new W().setFromMatrixColumn(t.matrix,0);if(i.shiftKey){let c=new W().setFromMatrixColumn(t.matrix,1),h=l.multiplyScalar(o).addScaledVector(c,a).multiplyScalar(mw*s.length());n.add(h)}else{s.applyAxisAngle(t.up,o*xd);let c=Math.min(Math.PI-Lg,Math.max(Lg,s.angleTo(t.up)-a*xd));s.applyAxisAngle(l.applyAxisAngle(t.up,o*xd),c-s.angleTo(t.up))}}else if(i.key==="+"||i.key==="="||i.key==="-"){let o=s.length()*(i.key==="-"?Ig:1/Ig);s.setLength(Math.min(e.maxDistance,Math.max(e.minDistance,o)))}else return!1;return t.position.copy(n).add(s),e.update(),!0}function yd(i,t){let e=t;e._quat?.setFromUnitVectors(i.up,new W(0,1,0)),e._quat&&e._quatInverse?.copy(e._quat).invert()}var yw=["quiet","within","near","broken","waived","near","within"],qc=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;this.renderer=new Vc({antialias:!0,alpha:!0}),this.soft=vw(this.renderer),this.renderer.setPixelRatio(this.soft?1:Math.min(2,devicePixelRatio)),this.renderer.localClippingEnabled=!0,t.append(this.renderer.domElement,this.labelLayer),this.renderer.domElement.setAttribute("aria-hidden","true"),this.controls=new Xc(this.camera,this.renderer.domElement),this.controls.enableDamping=!1,this.controls.addEventListener("change",()=>this.ask()),this.controls.addEventListener("start",()=>{this.flight++}),t.addEventListener("keydown",r=>{if(r.target===t){if(r.key==="Home")this.alongLight();else if(Dg(r,this.camera,this.controls))this.flight++;else return;r.preventDefault(),this.ask()}});let s=new na(16777215,1.9);s.position.set(-.4,.7,1),this.camera.add(s),this.stage.add(this.camera,new ia(16777215,1.35),this.seam,this.marker);for(let r of e.meshes)this.addPart(r);this.measure(),this.buildSeam(),this.alongLight(!1),new ResizeObserver(()=>this.fit()).observe(t),this.fit(),this.show(n.place)}host;atlas;walk;renderer;stage=new Go;camera=new qn(32,1,.1,1e4);controls;parts=new Map;seam=new Ti;marker=new Ti;labels=[];labelLayer=qt("div",{class:"scene-labels"});cutPlane=new Xn(new W(1,0,0),0);centre=new W;radius=50;cut=!1;shownJoint=-1;flight=0;waiting=!1;soft;addPart(t){let e=this.roleOf(t.part),n=new Ti,s=Mw(t),r=e==="cover",o=new ae(hn(r?"cover-solid":e==="base"?"base-solid":"other-solid")),a=new jo({color:o,side:r?Yn:Ri,transparent:r,opacity:r?.3:1,depthWrite:!r,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1}),l=new hs({color:new ae(hn(r?"cover-cut":"base-cut")),side:In}),c=new Rn(s,l);c.visible=!1,c.name="inside";let h=new Rn(s,a);h.renderOrder=r?2:0;let u=new Qr(Sw(t),new Ds({color:new ae(hn("ink")),transparent:!0,opacity:r?.5:.4}));u.renderOrder=r?3:1,n.add(h,c,u),n.userData={role:e},this.parts.set(t.part,n),this.stage.add(n)}roleOf(t){let e=this.walk.joint;return e.cover.includes(t)?"cover":e.base.includes(t)?"base":"other"}measure(){let t=new W(1/0,1/0,1/0),e=new W(-1/0,-1/0,-1/0);for(let n of this.atlas.meshes)for(let s=0;s<n.positions.length;s+=3){let r=new W(n.positions[s],n.positions[s+1],n.positions[s+2]);t.min(r),e.max(r)}for(let n of this.walk.joint.contours)for(let s of Vi(n))t.min(new W(...s)),e.max(new W(...s));this.centre.addVectors(t,e).multiplyScalar(.5),this.radius=Math.max(1,t.distanceTo(e)/2),this.camera.near=this.radius/500,this.camera.far=this.radius*40,this.controls.minDistance=this.radius/60,this.controls.maxDistance=this.radius*12}buildSeam(){this.shownJoint=this.walk.place.joint,this.seam.clear(),this.labels.length=0,nn(this.labelLayer);let{joint:t,facts:e}=this.walk,n=new W(...Js(t.beam).toward);for(let r of t.contours){let o=Vi(r),a=(r.summary.rib_width?.median??1.5)*.36,l=new Uint8Array(o.length);for(let[c,h,u]of e.worst[r.id]??[])l.fill(u,c,h+1);this.seam.add(bw(o.map(c=>new W(...c)),r.stations.u.map(c=>new W(...c)),n,a,l,r.closed))}let s=[];for(let r of this.atlas.payload.findings){if(r.joint!==t.id||r.station===null||r.severity==="note")continue;let o=t.contours.find(_=>_.id===r.contour);if(!o)continue;let a=new W(...Vi(o)[r.station]),l=new W(...o.stations.u[r.station]),c=s.find(_=>_.at.distanceTo(a)<this.radius/60);if(c){c.findings.push(r),c.numbers.textContent=Ms(c.findings),c.numbers.setAttribute("aria-label",`${c.numbers.textContent}: fly to these findings`);continue}let h=new ae(hn(r.waived?"waived":r.severity==="must-fix"?"broken":"near")),u=new On().setFromPoints([a.clone().addScaledVector(l,-this.radius/22),a.clone().addScaledVector(l,this.radius/22)]),d=new Qr(u,new Ds({color:h,depthTest:!1}));d.renderOrder=6,this.seam.add(d);let f=qt("button",{type:"button",class:`scene-label ${r.waived?"waived":r.severity}`,"data-finding":r.n,"aria-label":`${r.n}: fly to ${r.title}`},String(r.n));f.addEventListener("click",()=>this.walk.showFinding(r)),this.labelLayer.append(f);let g=a.clone().addScaledVector(l,this.radius/16);this.labels.push({element:f,at:g}),s.push({at:a,numbers:f,findings:[r]})}}show(t,e=!1){t.joint!==this.shownJoint&&this.buildSeam();let{contour:n,joint:s}=this.walk,r=new W(...Vi(n)[t.station]),o=new W(...n.stations.u[t.station]),a=new W(...Js(s.beam).toward),l=new W().crossVectors(a,o).normalize();if(this.buildMarker(r,o,a,l),this.cutPlane.setFromNormalAndCoplanarPoint(l.clone().negate(),r),e){let c=r.clone().addScaledVector(o,this.radius*.22).addScaledVector(a,this.radius*.2).addScaledVector(l,this.radius*.34);this.fly(c,r,a)}this.ask()}buildMarker(t,e,n,s){for(let u of[...this.marker.children])Ng(u);this.marker.clear();let r=Math.max(4,(this.walk.contour.summary.rib_width?.median??1.5)*3.2),o=(u,d)=>t.clone().addScaledVector(e,u*r).addScaledVector(n,d*r),a=new ae(hn("walker")),l=new qo(new On().setFromPoints([o(-1,-1),o(1,-1),o(1,1),o(-1,1)]),new Ds({color:a,depthTest:!1}));l.renderOrder=8;let c=new Rn(new ir(2*r,2*r),new hs({color:a,transparent:!0,opacity:this.cut?0:.12,side:Yn,depthWrite:!1}));c.position.copy(t),c.up.copy(n),c.lookAt(t.clone().add(s)),c.renderOrder=7;let h=new Rn(new Jo(r*.08,16,12),new hs({color:a,depthTest:!1}));h.position.copy(t),h.renderOrder=9,this.marker.add(l,c,h),this.host.dataset.marker=[t.x,t.y,t.z].map(u=>u.toFixed(3)).join(" ")}fly(t,e,n){let s=++this.flight,r=this.camera.position.clone(),o=this.controls.target.clone(),a=this.camera.up.clone(),l=Zd()||this.soft?0:550,c=performance.now(),h=u=>{if(s!==this.flight)return;let d=l?Math.min(1,(u-c)/l):1,f=d*d*(3-2*d);this.camera.position.lerpVectors(r,t,f),this.controls.target.lerpVectors(o,e,f),this.camera.up.lerpVectors(a,n,f).normalize(),yd(this.camera,this.controls),this.controls.update(),this.ask(),d<1&&requestAnimationFrame(h)};h(c)}distance(){let t=Math.tan(this.camera.fov*Math.PI/360);return this.radius*1.02/Math.min(t,t*Math.max(.3,this.camera.aspect))}alongLight(t=!0){let e=Js(this.walk.joint.beam),n=this.centre.clone().addScaledVector(new W(...e.toward),this.distance());this.go(n,new W(...e.up),t)}aslant(t=!0){let e=Js(this.walk.joint.beam),n=new W(...e.toward).multiplyScalar(.75).addScaledVector(new W(...e.right),.45).addScaledVector(new W(...e.up),-.75).normalize();this.go(this.centre.clone().addScaledVector(n,this.distance()),new W(...e.toward),t)}go(t,e,n){if(n){this.fly(t,this.centre.clone(),e);return}this.camera.up.copy(e),this.camera.position.copy(t),this.controls.target.copy(this.centre),yd(this.camera,this.controls),this.controls.update(),this.ask()}flyToMarker(){this.show(this.walk.place,!0)}setCut(t){this.cut=t;let e=t?[this.cutPlane]:[];for(let n of this.parts.values())n.traverse(s=>{let r=s.material;if(r){if(r.clippingPlanes=e,s.name==="inside")s.visible=t;else if(s instanceof Rn&&n.userData.role==="cover"){let o=r;o.opacity=t?1:.3,o.transparent=!t,o.depthWrite=t,o.side=t?Ri:Yn}r.needsUpdate=!0}});this.seam.traverse(n=>{let s=n.material;s&&n instanceof Rn&&(s.clippingPlanes=e)}),this.show(this.walk.place)}setVisible(t,e){let n=this.parts.get(t);n&&(n.visible=e),this.ask()}get partIds(){return[...this.parts.keys()]}retheme(){for(let[t,e]of this.parts)this.stage.remove(e),e.traverse(Ng),this.parts.delete(t);for(let t of this.atlas.meshes)this.addPart(t);this.buildSeam(),this.setCut(this.cut)}fit(){let t=this.host.getBoundingClientRect();t.width<10||t.height<10||(this.renderer.setSize(t.width,t.height),this.camera.aspect=t.width/t.height,this.camera.updateProjectionMatrix(),this.ask())}ask(){this.waiting||(this.waiting=!0,requestAnimationFrame(()=>{this.waiting=!1,this.renderer.render(this.stage,this.camera);let t=this.host.getBoundingClientRect();for(let{element:e,at:n}of this.labels){let s=n.clone().project(this.camera),r=s.z<1&&Math.abs(s.x)<1&&Math.abs(s.y)<1;e.hidden=!r,r&&(e.style.transform=`translate(${(s.x+1)/2*t.width}px, ${(1-s.y)/2*t.height}px) translate(-50%, -50%)`)}this.host.dataset.eye=this.camera.position.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.target=this.controls.target.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.drawn=String(Number(this.host.dataset.drawn??0)+1)}))}};function vw(i){let t=i.getContext(),e=t.getExtension("WEBGL_debug_renderer_info"),n=e?String(t.getParameter(e.UNMASKED_RENDERER_WEBGL)):"";return/swiftshader|llvmpipe|software/i.test(n)}function Ng(i){let t=i;t.geometry?.dispose(),t.material&&t.material.dispose()}function Ug(i){let t=i.length/3,e=1024;for(;e<t*2;)e*=2;let n=new Int32Array(e).fill(-1),s=new Uint32Array(t),r=o=>Math.round(i[o]*1e4);for(let o=0;o<t;o++){let[a,l,c]=[r(3*o),r(3*o+1),r(3*o+2)],h=(Math.imul(a,73856093)^Math.imul(l,19349663)^Math.imul(c,83492791))&e-1;for(;;h=h+1&e-1){let u=n[h];if(u<0){n[h]=o,s[o]=o;break}if(r(3*u)===a&&r(3*u+1)===l&&r(3*u+2)===c){s[o]=u;break}}}return s}function Mw(i){let{positions:t,triangles:e,face:n}=i,s=Ug(t),r=t.length/3,o=new Map,a=new Uint32Array(e.length),l=[];for(let h=0;h<e.length;h++){let u=s[e[h]],d=(n[Math.floor(h/3)]+1)*r+u,f=o.get(d);f===void 0&&(f=l.length/3,o.set(d,f),l.push(t[3*u],t[3*u+1],t[3*u+2])),a[h]=f}let c=new On;return c.setAttribute("position",new Un(new Float32Array(l),3)),c.setIndex(new Un(a,1)),c.computeVertexNormals(),c}function Sw(i){let{positions:t,triangles:e,face:n}=i,s=Ug(t),r=t.length/3,o=new Map;for(let c=0;c<e.length;c++){let[h,u]=[s[e[c]],s[e[c%3===2?c-2:c+1]]],d=h<u?h*r+u:u*r+h,f=n[Math.floor(c/3)],g=o.get(d);g===void 0?o.set(d,f):g===f&&o.set(d,-2)}let a=[];for(let[c,h]of o){if(h===-2)continue;let u=Math.floor(c/r),d=c%r;a.push(t[3*u],t[3*u+1],t[3*u+2],t[3*d],t[3*d+1],t[3*d+2])}let l=new On;return l.setAttribute("position",new Un(new Float32Array(a),3)),l}function bw(i,t,e,n,s,r){let a=[],l=[],c=[],h=yw.map(g=>new ae(hn(g)));i.forEach((g,_)=>{let p=s[_]===3||s[_]===4?1.5:s[_]===5?1.3:s[_]===2?1.1:.85,m=h[s[_]];for(let v=0;v<8;v++){let A=v/8*2*Math.PI,M=g.clone().addScaledVector(t[_],Math.cos(A)*n*p).addScaledVector(e,Math.sin(A)*n*p);a.push(M.x,M.y,M.z),l.push(m.r,m.g,m.b)}});let u=r?i.length:i.length-1;for(let g=0;g<u;g++){let _=(g+1)%i.length;for(let p=0;p<8;p++){let m=(p+1)%8;c.push(g*8+p,_*8+p,_*8+m,g*8+p,_*8+m,g*8+m)}}let d=new On;d.setAttribute("position",new Un(new Float32Array(a),3)),d.setAttribute("color",new Un(new Float32Array(l),3)),d.setIndex(c);let f=new Rn(d,new hs({vertexColors:!0,side:Yn}));return f.renderOrder=4,f}function Fg(i,t,e,n){let s=(_,p)=>t.summary[_]?.max??p,r=s("rib_width",1.5),o=Math.min(s("rib_height",1.2),4),a=s("cover_thickness_max",2),l=Math.max(r/2+2.2,r*1.9),c=Math.max(l,Math.min(r/2+e+s("clamp_land",2)+.7,r/2+6)),h=vd(t),u=a+Math.max(0,Math.min(s("gap",0),1))+.35,d=Math.max(...(n?.slopes??[0]).map(Math.abs));u+=Math.min(d,1)*l*.5;for(let _ of n?.shade??[])_.v!==null&&_.v<a+5&&(u=Math.max(u,_.v+1.2));let f=Math.min(d,1)*l*.5,g={left:h>0?-l:-c,right:h<0?l:c};return i.rib_on==="cover"?{...g,bottom:-Math.max(1.6,o)-f,top:Math.max(u,o+1.2)}:{...g,bottom:-(o+1.4)-f,top:u}}var vd=i=>i.clamp_side==="outer"?1:i.clamp_side==="inner"?-1:0;function Md(i,t,e,n=7){let s=[...i].sort((l,c)=>l.wanted-c.wanted),r=[],o=t;for(let l of s){let c=Math.max(o,l.wanted-l.height/2);r.push(c),o=c+l.height+n}let a=e;for(let l=s.length-1;l>=0;l--)r[l]=Math.min(r[l],a-s[l].height),a=r[l]-n;s.forEach((l,c)=>l.put(r[c]))}function $c(i,t,e=2){let n=[];for(let r of i.split(/\s+/)){let o=n[n.length-1];o!==void 0&&o.length+1+r.length<=t?n[n.length-1]=`${o} ${r}`:n.push(r)}if(n.length<=e)return n.map(r=>r.length>t?`${r.slice(0,t-1)}…`:r);let s=n.slice(0,e);return s[e-1]=`${s[e-1].slice(0,t-1)}…`,s}var zs=i=>i.waived?"waived":i.severity;function Og(i,t){let e=i.limit?` (${i.limit})`:"";return`${Mr[i.severity]} ${i.n}  ${i.title}${t&&t!=="–"?`: ${t}`:""}${e}`}function Bg(i,t,e,n,s){let r=t+30+n*22<s.right?1:-1,o=t+r*(20+n*22),a=Math.max(s.top+10,Math.min(s.bottom-10,e-18));return wt("g",{class:`pin ${zs(i)}`,"data-finding":i.n},wt("path",{d:`M${st(t)} ${st(e)}L${st(o)} ${st(a)}`}),wt("circle",{class:"pin-dot",cx:st(t),cy:st(e),r:2.6}),wt("circle",{class:"pin-head",cx:st(o),cy:st(a),r:9}),wt("text",{x:st(o),y:st(a+4),"text-anchor":"middle"},String(i.n)))}function kg(i,t,e,n){if(!i.at)return null;let{x:s,y:r,z:o,u:a}=e.stations,l=[i.at[0]-s[n],i.at[1]-r[n],i.at[2]-o[n]],c=(_,p)=>_[0]*p[0]+_[1]*p[1]+_[2]*p[2],h=a[n],u=t.beam,d=c(l,h),f=-c(l,u);return c(l,l)-d*d-f*f<=.6*.6?[d,f]:null}var zg=14,Yc=class{constructor(t,e,n,s,r,o,a,l,c){this.root=t;this.words=e;this.bands=n;this.here=s;this.key=r;this.contour=o;this.station=a;this.plot=l;this.width=c}root;words;bands;here;key;contour;station;plot;width;margins={left:[],right:[]};shown=new Set;value(t){return this.contour.stations[t]?.[this.station]??null}finding(t){let e=[t.column,...t.judged??[]];return this.here.find(n=>e.includes(n.column??"")||e.includes(n.quantity))??null}text(t){let e=t.column;return e&&t.station!==this.station&&this.contour.stations[e]?this.words.value(this.value(e),e):t.value}lines(t,e,n){let s=e!==null&&e.column!==null&&e.column!==t.column,r=e&&e.value!=="–"&&(s||e.column===t.column)?this.text(e):this.words.value(this.value(t.column),t.column),o=e?.limit||this.bands.find(l=>l.columns.includes(t.column)&&l.words)?.words||"",a=[["dim-title",t.title],["dim-value",e?`${Mr[e.severity]}${e.n} ${r}`:r]];s&&this.words.unit(e.column)!==this.words.unit(t.column)&&a.push(["dim-limit",this.words.value(this.value(t.column),t.column)]);for(let l of o?$c(o,n):[])a.push(["dim-limit",l]);return t.also&&a.push(["dim-limit",t.also]),a}group(t,e){return e&&this.shown.add(e),wt("g",{class:`dim-label ${e?zs(e):""}`,"data-column":t.column,"data-finding":e?.n})}arrows(t,e,n,s,r=""){let o=Math.hypot(n-t,s-e),a=`url(#${this.key}-arrow)`,l=`dim ${r}`;if(o>=22){this.root.append(wt("path",{class:l,d:`M${st(t)} ${st(e)}L${st(n)} ${st(s)}`,"marker-start":a,"marker-end":a}));return}let[c,h]=o>.01?[(n-t)/o,(s-e)/o]:[0,1];this.root.append(wt("path",{class:l,d:`M${st(t-c*16)} ${st(e-h*16)}L${st(t)} ${st(e)}`,"marker-end":a}),wt("path",{class:l,d:`M${st(n+c*16)} ${st(s+h*16)}L${st(n)} ${st(s)}`,"marker-end":a}))}sketch(t,[e,n]){this.root.append(wt("path",{class:t,d:`M${st(e[0])} ${st(e[1])}L${st(n[0])} ${st(n[1])}`}))}across(t,e,n,s,r,o=0){let[a,l]=[Math.min(t,e),Math.max(t,e)],c=this.finding(r),h=c?zs(c):"";[a,l].forEach((m,v)=>this.root.append(wt("path",{class:"extension",d:`M${st(m)} ${st(s[v])}V${st(n-4)}`}))),this.arrows(a,n,l,n,h);let u=this.group(r,c),d=o===0?(a+l)/2:o>0?a+4:l-4,f=o===0?"middle":o>0?"start":"end",[g,_,...p]=this.lines(r,c,40);u.append(wt("text",{class:"dim-value",x:st(d),y:st(n-6),"text-anchor":f},wt("tspan",{class:"dim-title"},`${g[1]}  `),wt("tspan",{class:"dim-value"},_[1]))),p.reverse().forEach(([m,v],A)=>u.append(wt("text",{class:m,x:st(d),y:st(n-19-A*13),"text-anchor":f},v))),this.root.append(u)}along(t,e,n,s){let r=this.edge(t),o=this.finding(s);for(let[a,l]of[e,n])this.root.append(wt("path",{class:"extension",d:`M${st(a)} ${st(l)}H${st(r+t*4)}`}));this.arrows(r,e[1],r,n[1],o?zs(o):""),this.slot(t,(e[1]+n[1])/2,s)}leader(t,e,n){let s=this.edge(t),r=s+t*4;this.slot(t,e[1],n,o=>this.root.append(wt("path",{class:"leader",d:`M${st(r+t*4)} ${st(o)}H${st(r-t*6)}L${st(e[0])} ${st(e[1])}`}),wt("circle",{class:"leader-dot",cx:st(e[0]),cy:st(e[1]),r:2})))}edge(t){return t<0?this.plot.x-12:this.plot.x+this.plot.w+12}slot(t,e,n,s=()=>{}){let r=this.edge(t)+t*10,o=t<0?"end":"start",a=this.finding(n),l=Math.floor((t<0?r:this.width-r)/5.4),c=this.lines(n,a,l),h=this.group(n,a);this.root.append(h),this.margins[t<0?"left":"right"].push({wanted:e,height:c.length*zg,put:u=>{c.forEach(([d,f],g)=>h.append(wt("text",{class:d,x:st(r),y:st(u+11+g*zg),"text-anchor":o},f))),s(u+8)}})}settle(t,e){Md(this.margins.left,t,e),Md(this.margins.right,t,e)}};function Vg(i,t,e,n,s,r,o,a){let l=(i("cover_thickness")??0)+(e>0?Math.max(i("gap")??0,0):0),c=i("light_lean"),h=i("light_enters_inner"),u=i("light_enters_outer"),d=c!==null&&h!==null&&u!==null,f=t+n.margin,[g,_]=d?[h-n.margin,u+n.margin]:[-f,f],p=Math.max((s.at(0,l)[1]-s.ceiling)/s.scale,0),m=U=>Math.tan(U*Math.PI/180)*p,[v,A]=d?[g+m(c-n.cone),_+m(c+n.cone)]:[g,_],M=U=>{let C=(U+f)/(2*f),B=(X,z)=>X+C*(z-X);return{above:B(v,A),enters:B(g,_),foot:U}},R=(U,C)=>{let[B,X]=s.at(U,C??l+p);return`${st(B)} ${st(C===null?s.ceiling:X)}`},w=(U,C)=>C>=l?U.enters+(U.above-U.enters)*(C-l)/Math.max(p,1e-9):U.foot+(U.enters-U.foot)*C/Math.max(l,1e-9),x=(U,C,B)=>{let X=B===null?[R(U.above,null),R(U.enters,l)]:B>l?[R(w(U,B),B),R(U.enters,l)]:[R(w(U,B),B)],z=B===null?[R(C.enters,l),R(C.above,null)]:B>l?[R(C.enters,l),R(w(C,B),B)]:[R(w(C,B),B)];return`M${[...X,R(U.foot,0),R(C.foot,0),...z].join("L")}Z`},b=[wt("path",{class:"light",d:x(M(-f),M(f),null)})],k=r.filter(U=>U.leans===d||r.every(C=>C.leans===U.leans));for(let U of k){let C=U.v!==null&&U.v<l+p?U.v:null;b.push(wt("path",{class:U.share>0?"shade part":"shade",d:x(M(U.low),M(U.high),C),"data-low":U.low,"data-high":U.high,"data-share":U.share}))}let N=Math.max(k.length?4:1,Math.min(k.length?6:4,Math.round(2*f*s.scale/26)));for(let U=0;U<N;U++){let C=M(-t+(U+.5)/N*2*t),B=k.find(j=>C.foot>=j.low-1e-6&&C.foot<=j.high+1e-6),X=Math.min(6/s.scale,l>0?l:.1);if(!B){b.push(wt("path",{class:"ray","marker-end":`url(#${o}-arrow)`,d:`M${R(C.above,null)}L${R(C.enters,l)}L${R(w(C,X),X)}`}));continue}let z=B.v!==null&&B.v<l+p?B.v:l+p*.8,[ot,$]=s.at(w(C,z),z);b.push(wt("path",{class:"ray lost",d:`M${R(w(C,z),z)}L${z>l?`${R(C.enters,l)}L`:""}${R(w(C,X),X)}`}),wt("path",{class:"ray",d:`M${R(C.above,null)}L${R(w(C,z),z)}`}),wt("path",{class:B.share>0?"stop part":"stop",d:`M${st(ot-5)} ${st($-5)}L${st(ot+5)} ${st($+5)}M${st(ot-5)} ${st($+5)}L${st(ot+5)} ${st($-5)}`}))}let L=[],G=k.find(U=>U.part);if(G){let U=G.v!==null&&G.v>=l+p,C=[G.v!==null?`${G.v.toFixed(1)} mm above`:"",Math.abs(G.along??0)>.5?`${Math.abs(G.along).toFixed(1)} mm ${G.along>0?"ahead":"back"}`:""].filter(Boolean).join(", "),B=M(-f),X=G.v!==null&&!U?G.v:l+p,[z,ot]=s.at(Math.min(B.above,B.enters,B.foot),X);L.push(wt("text",{class:"caster","text-anchor":"end",x:st(z-8),y:st(Math.max(s.ceiling+12,ot-4)),"data-part":G.part},`${a(G.part)}${C?`, ${C}`:""}`))}return{drawn:b,told:L}}function Xg(i){let t=new Map;i.owner.forEach((n,s)=>{t.has(n)||t.set(n,[]),t.get(n).push(s)});let e=new Map;for(let[n,s]of t)e.set(n,ww(i.segments,s));return e}function ww(i,t){let e=[],n=new Map,s=(u,d)=>{let[f,g]=[Math.round(u/.001),Math.round(d/.001)];for(let[_,p]of[[f,g],[f+1,g],[f-1,g],[f,g+1],[f,g-1]]){let m=n.get(`${_},${p}`);if(m!==void 0&&Math.hypot(e[m][0]-u,e[m][1]-d)<=.001)return m}return e.push([u,d]),n.set(`${f},${g}`,e.length-1),e.length-1},r=new Map,o=(u,d,f)=>{r.has(u)||r.set(u,[]),r.get(u).push([d,f])};for(let u of t){let d=s(i[4*u],i[4*u+1]),f=s(i[4*u+2],i[4*u+3]);d!==f&&(o(d,u,f),o(f,u,d))}let a=new Set,l=u=>{let d=[u];for(let f=u;;){let g=r.get(f)?.find(([_])=>!a.has(_));if(!g||(a.add(g[0]),f=g[1],d.push(f),f===u))return d}},c=[],h=[...r.keys()].sort((u,d)=>(r.get(u).length%2?0:1)-(r.get(d).length%2?0:1));for(let u of h)for(;r.get(u).some(([d])=>!a.has(d));)c.push(l(u).map(d=>e[d]));return Ew(c)}function Ew(i){let t=i.filter(n=>_a(n)),e=i.filter(n=>!_a(n));for(;e.length;){let n=e.pop();for(let s=!0;s&&!_a(n);){s=!1;let r=n[n.length-1];for(let o=0;o<e.length;o++){let a=e[o];if(Sd(r,a[0]))n=[...n,...a];else if(Sd(r,a[a.length-1]))n=[...n,...[...a].reverse()];else continue;e.splice(o,1),s=!0;break}}t.push(n)}return t}var Sd=(i,t)=>Math.hypot(i[0]-t[0],i[1]-t[1])<=.05,_a=i=>i.length>2&&Sd(i[0],i[i.length-1]);function qg(i,t){return t===0?i:i?.map(e=>e.map(([n,s])=>[n,s-t*n]))}function Gg(i,t){let e=[];for(let s of i??[])for(let r=0;r<s.length;r++){let o=s[r],a=s[(r+1)%s.length];o[0]<=t!=a[0]<=t&&e.push(o[1]+(t-o[0])/(a[0]-o[0])*(a[1]-o[1]))}e.sort((s,r)=>s-r);let n=[];for(let s=0;s+1<e.length;s+=2)n.push([e[s],e[s+1]]);return n}var Hg=.01;function $g(i,t,e,n,s,r){let o=[],a=0;for(let l=0;a<r&&l<2e3;l++){let c=n*(l+.5)*Hg,h=Wg(Gg(t,c),e).map(([p])=>p),d=Wg(Gg(i,c),e).filter(([p])=>p<.5).map(([,p])=>p);if(!h.length||!d.length){if(a>0)break;continue}let f=Math.max(...d.filter(p=>p<Math.min(...h)+.5)),g=Math.min(...h.filter(p=>p>f-.5));if(!Number.isFinite(f)||!Number.isFinite(g)){if(a>0)break;continue}let _=g-s;if(_>f)o.push({u:c,low:f,high:_,drawn:g}),a+=(_-f)*Hg;else if(a>.02)break}return o}function Wg(i,t){return t>0?i:i.map(([e,n])=>[-n,-e]).reverse()}var jc=3;function Jg(i){let{joint:t,facts:e,contour:n,station:s,words:r,width:o,height:a,key:l,frame:c}=i,h=n.stations.s[s],u=lt=>n.stations[lt]?.[s]??null,d=Yh(i.findings,t,n,s),f=t.rib_on==="none"||d.some(lt=>lt.rule==="rib-missing"&&!lt.waived),g=o<560?100:112,_=Math.min(d.length,jc)+(d.length>jc?1:0),p=74+(_?_*16:0),m={x:g,y:p,w:o-2*g,h:a-p-34},v=Math.min(m.w/(c.right-c.left),m.h/(c.top-c.bottom)),A=c.left-(m.w/v-(c.right-c.left))/2,M=c.top+(m.h/v-(c.top-c.bottom))*.15,R=lt=>m.x+(lt-A)*v,w=lt=>m.y+(M-lt)*v,x=i.sections?.slope(s)??0,b=(lt,ft)=>[R(lt),w(ft+x*lt)],k={at:b,scale:v,ceiling:m.y-24},N=t.rib_on==="cover"?-1:1,L=wt("svg",{class:"section-drawing",viewBox:`0 0 ${st(o)} ${st(a)}`,width:st(o),height:st(a),role:"img","aria-label":`Section across the seam at s = ${h.toFixed(2)} mm`,"data-slope":x});L.append(wt("defs",null,Jc(`${l}-base`,"hatch-base",6,45),Jc(`${l}-cover`,"hatch-cover",15,-45),Jc(`${l}-other`,"hatch-other",5,90),Jc(`${l}-trap`,"hatch-trap",4,90),wt("clipPath",{id:`${l}-window`},wt("rect",{x:m.x,y:m.y-24,width:m.w,height:m.h+24})),wt("marker",{id:`${l}-arrow`,viewBox:"0 0 10 6",refX:9.5,refY:3,markerWidth:9,markerHeight:6,orient:"auto-start-reverse"},wt("path",{d:"M0 0.6 L10 3 L0 5.4 Z",class:"arrow-head"}))));let G=i.sections?.at(s)??null,U=G?Xg(G):new Map,C=wt("g",{"clip-path":`url(#${l}-window)`});L.append(C);let B=(u("rib_width_top")??u("rib_width"))===null?null:(u("rib_width_top")??u("rib_width"))/2,X=e.drop,z=i.sections?.shadeAt(s)??[],ot=B===null?null:Vg(u,B,N,e,k,z,l,lt=>r.part(lt));ot&&C.append(...ot.drawn);let $=[{side:-1,name:"inner",columns:[]},{side:1,name:"outer",columns:[]}],j=N>0?0:1,tt=N>0?0:-(X??0);if(!f&&X!==null){let lt=ft=>qg(U.get(ft),x);for(let ft of $){let _t=u(`trap_area_${ft.name}`);_t===null||!U.size||(ft.columns=$g(lt(j),lt(1-j),N,ft.side,X,_t),ft.columns.length>=2&&C.append(...Rw(ft.columns,N,tt,b,l)))}}let pt=new Set(z.map(lt=>i.sections?.ownerOf(lt.part)).filter(lt=>lt!==void 0));for(let lt of[...U.keys()].sort((ft,_t)=>Zg(ft)-Zg(_t))){let ft=lt===0?"base":lt===1?"cover":"other",_t=U.get(lt).map(Ht=>bd(Ht,R,w)).join("");C.append(wt("path",{class:`body ${ft}`,d:_t,"fill-rule":"evenodd"}),wt("path",{class:"hatching",d:_t,"fill-rule":"evenodd",fill:`url(#${l}-${ft})`}),wt("path",{class:`outline ${ft}${pt.has(lt)?" casts":""}`,d:_t,"data-part":ft==="other"?i.sections?.partOf(lt):null}))}let ht=!f&&B!==null&&e.collapse!==null&&U.get(j)!==void 0;if(ht){let lt=`${l}-melt`,ft=B*1.6,_t=-e.collapse*N;L.querySelector("defs").append(wt("clipPath",{id:lt},wt("path",{d:U.get(j).map(jt=>bd(jt,R,w)).join(""),"clip-rule":"evenodd"})));let Ht=[b(-ft,0),b(ft,0),b(ft,_t),b(-ft,_t)];C.append(wt("path",{class:"melt","clip-path":`url(#${lt})`,d:`M${Ht.map(([jt,Vt])=>`${st(jt)} ${st(Vt)}`).join("L")}Z`}))}!f&&X!==null&&U.get(1)&&C.append(wt("path",{class:"moved",d:U.get(1).map(lt=>bd(lt,R,ft=>w(ft-X))).join("")})),L.append(...ot?.told??[]),U.size?i.sections?.isNeighbour(s)&&L.append(wt("text",{class:"empty",x:o/2,y:a-11,"text-anchor":"middle"},"outline of the next station; values of this one")):L.append(wt("text",{class:"empty",x:o/2,y:a-40,"text-anchor":"middle"},i.sections?"No section was kept at this station.":"The document carries no section outlines."));let K=new Yc(L,r,e.bands,d,l,n,s,m,o),mt=Tw(i,K,{half:B,at:b,plot:m,sides:$,up:N,sunk:tt,ribless:f,melts:ht,slope:x,X:R,Y:w});return K.settle(m.y-26,a-24),Aw(L,d,K,i,mt,m,R,w,_),L.append(...Cw(m.x+4,a-16,v)),L.append(wt("text",{class:"side",x:12,y:st(a-8)},"◂ inner"),wt("text",{class:"side",x:st(o-12),y:st(a-8),"text-anchor":"end"},"outer ▸")),L}function Tw(i,t,e){let{contour:n,facts:s,compact:r}=i,{half:o,at:a,plot:l,sides:c,up:h,ribless:u}=e,d=x=>t.value(x),f=d("gap")??0,g=d("cover_thickness"),_=(g??0)+(h>0?f:0),p=l.y-8,m=l.y-36,v=o??.5,A=Math.min(d("rib_height")??.6,4),M={rib:a(0,-.35*A*h),flank_inner:a(-v,-.5*A*h),flank_outer:a(v,-.5*A*h),cover:a(v*.4,_*.6),gap:a(-v*.7,f/2*h),light:[a(0,_)[0],a(0,_)[1]-14],below:a(0,-(A+.7)*h),land:a(v+s.margin+.5,_),other:a(0,0)};o!==null&&!u&&(t.across(a(-o,0)[0],a(o,0)[0],m,[a(-o,0)[1],a(o,0)[1]],{column:"rib_width",title:"rib width",judged:["rib_width_top"]}),Zc(t,"rib_width",x=>[a(-x/2,0),a(-x/2,-A*h),a(x/2,0),a(x/2,-A*h)]));let R=d("clamp_land"),w=vd(n);if(o!==null&&R!==null&&w){let x=a(w*(o+s.margin),_),b=a(w*(o+s.margin+R),_);M.land=[(x[0]+b[0])/2,(x[1]+b[1])/2];let k=w>0?[x[1],b[1]]:[b[1],x[1]],N=d("clamp_tilt")!==null&&t.finding({column:"clamp_tilt",title:""})!==null;if(t.across(x[0],b[0],p,k,{column:"clamp_land",title:"land",judged:["clamp_share"]},w),Zc(t,"clamp_land",L=>[a(w*(o+s.margin+L),_),a(w*(o+s.margin+L),_+.5)]),N){let L=[b[0],x[1]];t.sketch("reference",[x,L]),t.leader(w,L,{column:"clamp_tilt",title:"tilt of the land"})}}if(g!==null){let x=h>0?f:0,b=o??0;t.along(1,a(b,x+g),a(b,x),{column:"cover_thickness",title:"cover",judged:["cover_thickness_min","cover_thickness_max"]}),Zc(t,"cover_thickness",k=>[a(-b*1.6,x+k),a(b*1.6,x+k)])}if(d("gap")!==null&&t.leader(-1,M.gap,{column:"gap",title:"gap",judged:["gap_min","gap_max"]}),e.melts&&d("melt_area")!==null&&!r&&t.leader(-1,a(-o*.5,-s.collapse*.5*h),{column:"melt_area",title:"melts"}),u)return M;for(let{side:x,name:b,columns:k}of c){let N=d(`rib_height_${b}`),L=o===null?0:x*o;N!==null&&N<6&&(t.along(x,a(L,0),a(L,-N*h),{column:`rib_height_${b}`,title:"rib height",judged:["rib_height"]}),Zc(t,"rib_height",X=>[a(L,-X*h),a(L+x*1.2,-X*h)]));let G=d(`trap_area_${b}`),U=k[Math.floor(k.length/2)],C=k[k.length-1],B=U?a(U.u,(U.low+U.high)/2*h+e.sunk):a(x*v*2,-.5*A*h);if(M[`trap_${b}`]=B,M[`exit_${b}`]=C?a(C.u,C.high*h+e.sunk):B,G!==null){let X=d(`trap_room_${b}`);t.leader(x,B,{column:`trap_area_${b}`,title:"trap, collapsed",judged:[`trap_room_${b}`,`trap_turn_${b}`,"trap_room"],also:X===null||t.finding({column:`trap_room_${b}`,title:"",judged:[`trap_turn_${b}`,"trap_room"]})?void 0:`${X.toFixed(2)} × ½ melt`})}d(`lip_gap_${b}`)!==null&&(!r||t.finding({column:`lip_gap_${b}`,title:""}))&&t.leader(x,M[`exit_${b}`],{column:`lip_gap_${b}`,title:"lip gap"})}return M}function Zc(i,t,e){let n=i.finding({column:t,title:"",judged:[`${t}_top`,`${t}_min`,`${t}_max`]});if(!n||n.limit_at===null)return;let s=e(n.limit_at);for(let r=0;r+1<s.length;r+=2)i.sketch(`ghost ${zs(n)}`,[s[r],s[r+1]])}function Yg(i,t){let e=i.column||i.quantity,n=e.endsWith("_inner")?"inner":e.endsWith("_outer")?"outer":"",s=e.startsWith("draft")?`flank_${n}`:e.startsWith("trap_open")||e.startsWith("lip")?`exit_${n}`:e.startsWith("trap")?`trap_${n||"outer"}`:e.startsWith("clamp")?"land":/^(beam|light|spot|path_in_cover)/.test(e)?"light":/^(cover|transmission|mean_path)/.test(e)?"cover":/^(gap|free_travel|stop|local_collapse|collapse)/.test(e)?"gap":/^(support|overhang|wall|nest)/.test(e)?"below":/^(rib|slenderness|melt)/.test(e)?"rib":"other";return t[s]??t.other}function Aw(i,t,e,n,s,r,o,a,l){let c={left:r.x,right:r.x+r.w,top:r.y-24,bottom:r.y+r.h},h=([f,g])=>f>=c.left&&f<=c.right&&g>=c.top&&g<=c.bottom,u=new Map;for(let f of t){if(e.shown.has(f))continue;let g=f.column?null:kg(f,n.joint,n.contour,n.station),_=g?[o(g[0]),a(g[1])]:Yg(f,s),[p,m]=h(_)?_:Yg(f,s),v=`${Math.round(p/8)},${Math.round(m/8)}`,A=u.get(v)??0;u.set(v,A+1),i.append(Bg(f,p,m,A,c))}let d=t.slice(jc).length;t.slice(0,jc).forEach((f,g)=>{let _=Og(f,e.text(f)),[p]=$c(_,Math.floor((n.width-24)/6.3),1),m=wt("text",{class:`mark-line ${zs(f)}`,x:12,y:st(15+g*16),"data-mark":f.n},p);p!==_&&m.append(wt("title",null,_)),i.append(m)}),d&&i.append(wt("text",{class:"mark-line",x:12,y:st(15+(l-1)*16)},`and ${d} more here`))}function Rw(i,t,e,n,s){let r=wd(i,a=>a.low*t+e,a=>a.high*t+e,n),o=t>0?wd(i,a=>a.high,a=>a.drawn,n):wd(i,a=>e-a.low,a=>-a.low,n);return[wt("path",{class:"trap-lost",d:o}),wt("path",{class:"trap",d:r}),wt("path",{fill:`url(#${s}-trap)`,d:r})]}var Zg=i=>i===0?1:i===1?2:0;function bd(i,t,e){return"M"+i.map(([n,s])=>`${st(t(n))} ${st(e(s))}`).join("L")+(_a(i)?"Z":"")}function wd(i,t,e,n){let s=(a,l)=>n(a,l).map(st).join(" "),r=i.map(a=>s(a.u,t(a))),o=[...i].reverse().map(a=>s(a.u,e(a)));return`M${[...r,...o].join("L")}Z`}function Jc(i,t,e,n){return wt("pattern",{id:i,width:e,height:e,patternUnits:"userSpaceOnUse",patternTransform:`rotate(${n})`},wt("line",{class:t,x1:0,y1:0,x2:0,y2:e}))}function Cw(i,t,e){let n=e*4>140?1:e*4>40?2:5,s=[];for(let r=0;r<4;r++)s.push(wt("rect",{class:r%2?"scale-light":"scale-dark",x:st(i+r*n*e/4),y:t,width:st(n*e/4),height:4}));return s.push(wt("text",{class:"side",x:st(i+n*e+6),y:t+5},`${n} mm`)),s}var Pw=0,Ed=new WeakMap,xa=class{constructor(t,e,n=!1){this.host=t;this.atlas=e;this.compact=n;new ResizeObserver(()=>{let s=t.getBoundingClientRect();Math.abs(s.width-this.size.width)<1&&Math.abs(s.height-this.size.height)<1||(this.size={width:s.width,height:s.height},this.place&&this.show(this.place))}).observe(t)}host;atlas;compact;key=`sec${Pw++}`;place=null;size={width:0,height:0};show(t){if(this.place=t,!this.size.width){let r=this.host.getBoundingClientRect();this.size={width:r.width,height:r.height}}let e=Math.max(320,this.size.width),n=Math.max(280,this.size.height),s=Td(this.atlas,t,e,n,this.key,this.compact);nn(this.host),this.host.append(s)}};function Td(i,t,e,n,s,r){let o=i.payload.joints[t.joint],a=o.contours[t.contour],l=i.sectionsOf(o.id,a.id);return Ed.has(a)||Ed.set(a,Fg(o,a,i.payload.facts[t.joint].margin,l)),Jg({joint:o,facts:i.payload.facts[t.joint],contour:a,station:t.station,sections:l,findings:i.payload.findings,words:i.words,frame:Ed.get(a),width:e,height:n,compact:r,key:s})}function Ad(i,t){let e=i.payload.joints[t.joint],n=e.contours[t.contour],{s,x:r,y:o,z:a}=n.stations,l=t.station;return qt("span",null,qt("b",{"data-s":s[l]},`s = ${s[l].toFixed(2)} mm`),` · station ${l+1} of ${s.length}`,e.contours.length>1?` of path ${n.id}`:"",` · x ${r[l].toFixed(2)}  y ${o[l].toFixed(2)}  z ${a[l].toFixed(2)} mm`)}var Iw=["not measured","within","close to the limit","limit broken","broken, waived","to be looked at","noted"],Kg=[[6.5,1.5],[5.5,3],[4,6],[0,14],[1.5,11],[2,10],[4.5,5]],th=1e3,eh=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;let s=r=>{let o=this.trackBox();if(!o)return;let a=Math.max(0,Math.min(1,(r.clientX-o.left)/o.width));this.walk.go(this.walk.at(a*this.walk.stretches().length),"strip")};t.addEventListener("pointerdown",r=>{!r.target.closest(".track")||r.target.closest("button")||(t.setPointerCapture(r.pointerId),s(r))}),t.addEventListener("pointermove",r=>{r.buttons&&t.hasPointerCapture(r.pointerId)&&s(r)}),new ResizeObserver(()=>this.moveCursor()).observe(t)}host;atlas;walk;values=[];cursor=qt("div",{class:"strip-cursor","aria-hidden":!0});shownJoint=-1;board=null;trackBox(){return this.host.querySelector(".track")?.getBoundingClientRect()??null}build(){this.shownJoint=this.walk.place.joint,nn(this.host),this.values=[];let{stretches:t,length:e}=this.walk.stretches(),{joint:n,facts:s}=this.walk,r=g=>g/e*th,o=qt("div",{class:"strip-board"});this.board=o;let a=wt("svg",{class:"ruler",viewBox:`0 0 ${th} 30`,preserveAspectRatio:"none","aria-hidden":!0}),l=qt("div",{class:"ruler-numbers","aria-hidden":!0}),c=Lw(e/8);for(let{start:g,length:_,contour:p}of t){a.append(wt("line",{class:"ruler-line",x1:r(g),x2:r(g+_),y1:29,y2:29}));for(let m=0;m<=_+1e-6;m+=c/5){let v=Math.abs(m/c-Math.round(m/c))<1e-6;a.append(wt("line",{class:"ruler-line",x1:st(r(g+m)),x2:st(r(g+m)),y1:v?20:25,y2:29})),v&&_-m>Math.max(c*.45,e*.075)&&l.append(Kc(qt("span",null,`${Math.round(m)}`),r(g+m)))}e>0&&_>c&&l.append(Kc(qt("span",{class:"end"},_.toFixed(1)),r(g+_))),t.length>1&&l.append(Kc(qt("b",null,n.contours[p].id),r(g+_/2))),this.turns(a,p,g,r)}o.append(qt("div",{class:"strip-head"},"unrolled seam, mm"),qt("div",{class:"track ruler-track"},a,l,this.marks(r)),qt("div",{class:"strip-head end"},"here · limit"));let h=g=>s.bands[g].severity==="must-fix"||this.atlas.payload.findings.some(_=>_.rule===s.bands[g].rule&&_.joint===n.id&&_.severity!=="note"),u=g=>this.atlas.payload.findings.some(_=>_.rule===s.bands[g].rule&&_.joint===n.id&&_.severity!=="note")?0:h(g)?1:2,d=s.bands.map((g,_)=>_).sort((g,_)=>u(g)-u(_));for(let g of d){let _=s.bands[g],p=h(g)?"":" more",m=wt("svg",{viewBox:`0 0 ${th} 14`,preserveAspectRatio:"none",role:"img","aria-label":this.spoken(g)});for(let{contour:A,start:M}of t){let R=n.contours[A],w=s.tracks[R.id]?.[g]??[];for(let[x,b,k]of w){let N=r(M+Qc(R.stations.s,x,0,R.length_mm)),L=r(M+Qc(R.stations.s,b,1,R.length_mm)),G=k>1?Math.max(3,L-N):L-N;m.append(wt("rect",{class:`cell ${Xa[k]}`,x:st(N),y:Kg[k][0],width:st(G),height:Kg[k][1]}))}}let v=qt("div",{class:`strip-value${p}`,"data-rule":_.rule});this.values[g]=v,o.append(qt("div",{class:`strip-label${p}`,title:_.title},_.title),qt("div",{class:`track${p}`},m),v)}let f=d.filter(g=>!h(g)).length;if(this.host.append(o,this.cursor),document.documentElement.style.setProperty("--strip",`${Math.ceil(o.getBoundingClientRect().height)+(f?38:18)}px`),f){let g=qt("button",{type:"button",class:"strip-more screen","aria-expanded":!1},`${f} further rules`);g.addEventListener("click",()=>{let _=o.classList.toggle("open");g.setAttribute("aria-expanded",String(_)),g.textContent=_?"fewer rules":`${f} further rules`,this.moveCursor()}),this.host.append(g)}}turns(t,e,n,s){let{stations:r,length_mm:o}=this.walk.joint.contours[e],a=r.turn_radius;if(a)for(let l=0;l<a.length;l++){if(a[l]===null||a[l]>60)continue;let c=l;for(;c+1<a.length&&a[c+1]!==null&&a[c+1]<=60;)c++;let[h,u]=[Qc(r.s,l,0,o),Qc(r.s,c,1,o)];t.append(wt("rect",{class:"turn",x:st(s(n+h)),width:st(s(u)-s(h)),y:20,height:9})),l=c}}marks(t){let e=this.atlas.payload.findings,n=qt("div",{class:"strip-marks"}),{stretches:s}=this.walk.stretches(),r=[];for(let o of e){if(o.joint!==this.walk.joint.id||o.station===null||$a(o))continue;let a=this.walk.joint.contours.findIndex(h=>h.id===o.contour),l=t(s[a].start+this.walk.joint.contours[a].stations.s[o.station]),c=r.find(h=>Math.abs(h.x-l)<12);c?c.findings.push(o):r.push({x:l,findings:[o]})}for(let{x:o,findings:a}of r){let l=a[0],c=qt("button",{type:"button",class:`strip-mark ${l.waived?"waived":l.severity}`,"data-finding":l.n,"aria-label":`Go to finding ${a.map(h=>h.n).join(", ")}: ${l.title}`},Ms(a));c.addEventListener("click",()=>this.walk.showFinding(l)),n.append(Kc(c,o))}return n}spoken(t){let{joint:e,facts:n}=this.walk,s=[];for(let o of e.contours)for(let[a,l,c]of n.tracks[o.id]?.[t]??[])c!==1&&s.push(`${Iw[c]} from ${o.stations.s[a].toFixed(1)} to ${o.stations.s[l].toFixed(1)} mm`);let r=n.bands[t];return`${r.title}, ${r.words}: ${s.length?s.slice(0,6).join("; "):"within everywhere"}`}show(t){t.joint!==this.shownJoint&&this.build();let{contour:e,facts:n,s,joint:r}=this.walk,o=this.atlas.words,a=this.walk.findingsHere();n.bands.forEach((l,c)=>{let h=a.find(_=>_.rule===l.rule),u=this.values[c];nn(u);for(let _ of["must-fix","attention","note","waived"])u.classList.remove(_);h&&u.classList.add(h.waived?"waived":h.severity);let d=qt("span",{class:"values"},h?`${Mr[h.severity]} `:""),f=l.columns.filter(_=>Array.isArray(e.stations[_])).map(_=>{let p=e.stations[_][t.station]??null,m=p===null?o.reason(r.id,e.id,_,s):"",v=p===null?"–":l.columns.length>1&&o.unit(_)?o.bare(p,_):o.value(p,_);return qt("b",{"data-column":_,"data-value":String(p),title:m||o.title(_)},v)});!f.length&&h&&f.push(qt("b",{"data-finding":h.n},h.value)),f.forEach((_,p)=>d.append(p?" / ":"",_)),u.dataset.state=h?h.waived?"waived":h.severity:"";let g=l.words||h?.limit||"";u.append(d,qt("span",{class:"limit",title:g},g))}),this.moveCursor()}moveCursor(){let t=this.trackBox();if(!t||!this.board)return;let e=this.host.getBoundingClientRect(),n=this.walk.unrolled/this.walk.stretches().length;this.cursor.style.transform=`translateX(${st(t.left-e.left+n*t.width)}px)`,this.cursor.style.height=`${st(this.board.getBoundingClientRect().height)}px`,this.cursor.dataset.share=n.toFixed(5)}};function Kc(i,t){return i.style.left=`${t/th*100}%`,i}function Qc(i,t,e,n){return e===0?t===0?0:(i[t-1]+i[t])/2:t===i.length-1?Math.max(n,i[t]):(i[t]+i[t+1])/2}function Lw(i){let t=10**Math.floor(Math.log10(i));return[1,2,5,10].map(e=>e*t).find(e=>e>=i*.75)??10*t}var nh=class{constructor(t){this.walk=t;this.slider.addEventListener("input",()=>{this.walk.go(this.walk.at(Number(this.slider.value)),"slider")});let e=(n,s)=>Me(n)?.addEventListener("click",s);e("walk-back",()=>this.walk.step(-1)),e("walk-on",()=>this.walk.step(1)),e("finding-back",()=>{let n=this.walk.neighbourFinding(-1);n&&this.walk.showFinding(n)}),e("finding-on",()=>{let n=this.walk.neighbourFinding(1);n&&this.walk.showFinding(n)}),this.slider.addEventListener("keydown",n=>{ih(n,this.walk)&&n.preventDefault()})}walk;slider=Me("walk-slider");where=Me("walk-where");show(t){let{length:e}=this.walk.stretches();this.slider.max=String(e),this.slider.step="any",this.slider.value=String(this.walk.unrolled);let n=this.walk.findingsHere(),r=`s = ${this.walk.s.toFixed(2)} mm`;this.slider.setAttribute("aria-valuetext",r+(n.length?`, finding ${n.map(c=>`${c.n} ${c.title}`).join(", ")}`:"")),nn(this.where);let o=this.walk.contour;this.where.append(qt("b",{"data-station":t.station},r),qt("span",null,`${t.station+1} / ${o.stations.s.length}${this.walk.joint.contours.length>1?` · ${o.id}`:""}`));let a=Me("walk-live"),l=n.map(c=>`Finding ${c.n}: ${c.title}`).join(". ");a&&a.textContent!==l&&(a.textContent=l)}};function ih(i,t){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let e=i.shiftKey?10:1;switch(i.key){case"ArrowRight":case"ArrowUp":return t.step(e),!0;case"ArrowLeft":case"ArrowDown":return t.step(-e),!0;case"Home":return t.go({station:0},"keys"),!0;case"End":return t.go({station:t.contour.stations.s.length-1},"keys"),!0;case"PageDown":case"PageUp":{let n=t.neighbourFinding(i.key==="PageDown"?1:-1);return n&&t.showFinding(n,"keys"),!0}}return!1}async function Dw(){let i=Me("seamcheck-data");if(n0(()=>{}),!i)return;let t=await Kd(i);if(document.documentElement.classList.add("alive"),!t.joints.length||!t.joints.some(_=>_.contours.length)){document.documentElement.dataset.ready="yes";return}let e=new Ea(t),n=new qa(t),s=new xa(Me("section-figure"),e),r=new xa(Me("section-beside"),e,!0),o=new Ya(Me("plan-figure"),e,n),a=new eh(Me("strip"),e,n),l=new nh(n),c=new Ga(Me("charts-judged"),Me("charts-within"),Me("charts-further"),e,n),h=new Rd(e,n),u=!1;vo(Me("section-beside"),()=>{u=!0,r.show(n.place)}),n.listen((_,p)=>{s.show(_),u&&r.show(_),o.show(_),a.show(_),l.show(_),c.show(_),h.show(_,p==="finding"||p==="keys-finding");for(let m of["section-caption","beside-caption"]){let v=Me(m);nn(v),v.append(Ad(e,_))}Uw(e,n),Fw(n)});for(let _ of["section-figure","plan-figure","strip","section-beside"])Me(_).addEventListener("keydown",p=>{ih(p,n)&&p.preventDefault()});for(let _ of document.querySelectorAll("[data-go]"))_.addEventListener("click",p=>{let m=t.findings.find(v=>String(v.n)===_.dataset.go);m&&m.station!==null&&(p.preventDefault(),n.showFinding(m),_.dataset.top!==void 0&&Me("desk").scrollIntoView({block:"start"}))});for(let _ of document.querySelectorAll("[data-place]"))_.addEventListener("click",p=>{let[m,v,A]=_.dataset.place.split(" "),M=t.joints.findIndex(w=>w.id===m),R=t.joints[M]?.contours.findIndex(w=>w.id===v)??-1;R<0||(p.preventDefault(),n.go({joint:M,contour:R,station:Number(A)},"finding"))});let d=Me("joint-choice");d?.addEventListener("change",()=>n.go({joint:Number(d.value),contour:0,station:0},"joint")),n.listen(_=>{d&&(d.value=String(_.joint))}),Nw(),Jd(t);let f=Ow(e);if(n0(()=>{o.draw(),c.retheme(),h.retheme()}),addEventListener("beforeprint",()=>{document.documentElement.dataset.print="yes";for(let _ of document.querySelectorAll("details.fold:not([open])"))_.open=!0,_.dataset.wasShut="";for(let _ of f)_.forPrint();o.draw({width:690,height:268}),c.forPrint(256)}),addEventListener("afterprint",()=>{delete document.documentElement.dataset.print;for(let _ of document.querySelectorAll("[data-was-shut]"))_.open=!1,delete _.dataset.wasShut;for(let _ of f)_.forScreen();o.draw(),c.forScreen()}),await document.fonts.ready,addEventListener("hashchange",()=>Qg(n)),Qg(n)){document.documentElement.dataset.ready="yes";return}let g=t.findings.find(_=>_.station!==null);g?n.showFinding(g,"start"):n.go({joint:0,contour:0,station:0},"start"),document.documentElement.dataset.ready="yes"}function Qg(i){let t=decodeURIComponent(location.hash.slice(1)),e=/^f(\d+)$/.exec(t);if(e){let o=i.payload.findings.find(a=>a.n===Number(e[1])&&a.station!==null);return o&&i.showFinding(o),o!==void 0}let n=/^(?:([^/]+)\/([^/]+)\/)?s=(-?[\d.]+)$/.exec(t);if(!n)return!1;let s=n[1]?i.payload.joints.findIndex(o=>o.id===n[1]):0,r=n[2]?i.payload.joints[s]?.contours.findIndex(o=>o.id===n[2])??-1:0;return s<0||r<0?!1:(i.go({joint:s,contour:r,station:Zh(i.payload.joints[s].contours[r].stations.s,Number(n[3]))},"finding"),!0)}function Nw(){let i=Me("list-filter"),t=Me("list-order"),e=document.querySelector("#finding-list tbody");if(!i||!t||!e)return;let n=[...e.querySelectorAll("[data-row]")],s=()=>{let r=i.value,o=c=>!r||c.dataset.severity===r||`rule:${c.dataset.rule}`===r;for(let c of n)c.hidden=!o(c);let a=n.filter(o).length;Me("list-count").textContent=a===n.length?`(${n.length})`:`(${a} of ${n.length})`;let l=c=>t.value==="rule"?[c.dataset.rule??"",0]:["",t.value==="s"?Number(c.dataset.s||1e9):0];e.append(...[...n].sort((c,h)=>l(c)[0].localeCompare(l(h)[0])||l(c)[1]-l(h)[1]||Number(c.dataset.row)-Number(h.dataset.row)))};i.addEventListener("change",s),t.addEventListener("change",s)}var Rd=class{constructor(t,e){this.atlas=t;this.walk=e;let n=[...document.querySelectorAll("[data-pane]")],s=r=>{for(let o of n)o.setAttribute("aria-selected",String(o.dataset.pane===r));for(let o of n)o.tabIndex=o.dataset.pane===r?0:-1;Me("pane-plan").hidden=r!=="plan",Me("pane-space").hidden=r!=="space",r==="space"&&this.open()};for(let r of n)r.addEventListener("click",()=>s(r.dataset.pane)),r.addEventListener("keydown",o=>{if(o.key!=="ArrowLeft"&&o.key!=="ArrowRight")return;let a=n[(n.indexOf(r)+1)%n.length];s(a.dataset.pane),a.focus()})}atlas;walk;scene=null;open(){if(this.scene)return;let t=Me("space-figure");this.atlas.meshes.length||t.append(qt("p",{class:"empty"},"The document carries no meshes of the parts; the seam is shown alone."));try{this.scene=new qc(t,this.atlas,this.walk)}catch{nn(t),t.append(qt("p",{class:"empty"},"This browser offers no 3-D drawing (WebGL). The plan and the sections show the same places."));return}this.tools(this.scene),t.addEventListener("keydown",e=>{e.key.startsWith("Page")&&ih(e,this.walk)&&e.preventDefault()})}tools(t){let e=Me("space-tools"),n=this.atlas.meshes.reduce((o,a)=>o+a.leftOut,0);n&&(Me("space-note").textContent=`${n} small faces are left out of this picture; all were measured.`);let s=(o,a)=>{let l=qt("button",{type:"button"},o);return l.addEventListener("click",a),l},r=(o,a,l)=>{let c=qt("input",{type:"checkbox"});return c.checked=a,c.addEventListener("change",()=>l(c.checked)),qt("label",null,c,` ${o}`)};yo(e,[s("Along the light",()=>t.alongLight()),s("Aslant",()=>t.aslant()),s("To the section",()=>t.flyToMarker()),r("cut open here",!1,o=>t.setCut(o)),...t.partIds.slice(0,12).map(o=>r(this.atlas.words.part(o),!0,a=>t.setVisible(o,a)))]),t.partIds.length>12&&yo(e,[r(`${t.partIds.length-12} further parts`,!0,o=>t.partIds.slice(12).forEach(a=>t.setVisible(a,o)))])}show(t,e){this.scene?.show(t,e)}retheme(){this.scene?.retheme()}};function Uw(i,t){let e=Me("all-values");if(!e)return;let{contour:n,joint:s,place:r,s:o}=t,a=Object.keys(i.payload.quantities).filter(l=>Array.isArray(n.stations[l])).map(l=>{let c=n.stations[l][r.station],h=c===null?i.words.reason(s.id,n.id,l,o):"";return qt("tr",null,qt("th",{scope:"row"},i.words.title(l)),qt("td",{"data-column":l,"data-value":String(c)},i.words.value(c,l)),qt("td",null,h))});nn(e),e.append(...a)}function Fw(i){let t=new Set(i.findingsHere().map(e=>String(e.n)));for(let e of document.querySelectorAll("#finding-list [data-row]"))t.has(e.dataset.row)?e.setAttribute("aria-current","true"):e.removeAttribute("aria-current")}function Ow(i){return[...document.querySelectorAll("[data-sheet]")].flatMap(t=>{let e=i.payload.findings.find(c=>String(c.n)===t.dataset.sheet);if(e.station===null)return[];let n=i.payload.joints.findIndex(c=>c.id===e.joint),s=i.payload.joints[n].contours.findIndex(c=>c.id===e.contour),r={joint:n,contour:s,station:e.station},o=(c,h)=>{nn(t),t.append(Td(i,r,c,h,`sheet${e.n}`,!0),qt("figcaption",null,Ad(i,r)))},a=()=>o(Math.max(340,Math.min(760,t.getBoundingClientRect().width||660)),400),l=vo(t,a);return[{draw:l,forPrint:()=>{l(),o(450,330)},forScreen:a}]})}var t0=!1,e0=[];function n0(i){if(e0.push(i),t0)return;t0=!0;let t=document.documentElement,e=()=>{for(let n of e0)n()};Me("theme-switch")?.addEventListener("click",()=>{let n=t.dataset.theme?t.dataset.theme==="dark":matchMedia("(prefers-color-scheme: dark)").matches;t.dataset.theme=n?"light":"dark",e()}),matchMedia("(prefers-color-scheme: dark)").addEventListener("change",e)}Dw().catch(i=>{console.error(i);let t=Me("trouble");t&&(t.hidden=!1,t.textContent=`The figures could not be drawn: ${i instanceof Error?i.message:String(i)}. All texts and tables below are complete.`)});})();
